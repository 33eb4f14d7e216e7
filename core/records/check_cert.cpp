#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

void checkLineId(const FieldCheck& check, const std::string& field, const std::string& id) {
  const std::size_t digits = id.find_first_not_of("0123456789");
  const std::string letter = digits == std::string::npos ? "" : id.substr(digits);
  const bool form =
      digits != 0 && id.size() <= 3 && !id.empty() && (letter.empty() || letter == "a" || letter == "b");
  check.that(form, field, "\"" + id + "\" is not a line such as 13 or 16b");
}

}  // namespace

absl::Status check(const v1::CertTable& table) {
  FieldCheck check;
  check.that(!table.lines().empty(), "lines", "is missing");
  check.enums(table);
  std::set<std::string> ids;
  for (int i = 0; i < table.lines_size(); ++i) {
    const v1::CertLine& line = table.lines(i);
    FieldCheck at = check.at("lines", i);
    checkLineId(at, "id", line.id());
    at.that(ids.insert(line.id()).second, "id", "is given twice");
    at.range("item", line.item(), 1, 16);
    at.that(check.ok() && std::stoul(line.id()) == line.item(), "item", "is not the number in id");
    at.text("asks", line.asks(), 3, 400);
    at.that((line.from() == v1::CERT_FROM_DESIGN) == !line.by_design().empty(), "by_design",
            "belongs to CERT_FROM_DESIGN and to nothing else");
    at.text("by_design", line.by_design(), 0, 400);
  }
  checkStatedSources(check, table.sources());
  return check.status();
}

absl::Status check(const v1::CertStatements& statements) {
  FieldCheck check;
  std::set<std::string> ids;
  for (int i = 0; i < statements.statements_size(); ++i) {
    FieldCheck at = check.at("statements", i);
    checkLineId(at, "line", statements.statements(i).line());
    at.that(ids.insert(statements.statements(i).line()).second, "line", "is given twice");
    at.text("text", statements.statements(i).text(), 3, 2000);
  }
  return check.status();
}

}  // namespace newel
