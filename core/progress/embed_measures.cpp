// Build-time program: proves the measures and writes them into one C++ file.
#include "core/progress/measure_table.h"
#include "core/records/embedding.h"
#include "core/records/record_text.h"

int main(int argc, char** argv) {
  return newel::embedMain(argc, argv, "kMeasures",
                          [](const std::string& folder) -> absl::StatusOr<std::string> {
                            const auto table = newel::MeasureTable::load(folder);
                            if (!table.ok()) return table.status();
                            newel::v1::MeasureKindList list;
                            for (const auto& kind : table->kinds()) *list.add_kinds() = kind;
                            return newel::toBytes(list);
                          });
}
