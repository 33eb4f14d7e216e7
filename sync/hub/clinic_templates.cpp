// ClinicLibrary: the clinic's own templates. They are few and read together, so that they lie together, as
// one of the clinic's one-of-a-kind values: the one writer at a time keeps two therapists from losing each
// other's.
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "core/library/templates.h"
#include "core/progress/measure_table.h"
#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/hub/clinic_library.h"

namespace newel {
namespace {

constexpr char kName[] = "templates";

absl::StatusOr<v1::TemplateBook> bookIn(HubTransaction& transaction) {
  v1::TemplateBook book;
  if (!book.ParseFromString(transaction.setting(kName)))
    return absl::DataLossError("templates: not to be read");
  return book;
}

v1::ProgrammeTemplate* find(v1::TemplateBook& book, const std::string& id) {
  auto& list = *book.mutable_templates();
  const auto found = std::find_if(list.begin(), list.end(),
                                  [&id](const v1::ProgrammeTemplate& one) { return one.id() == id; });
  return found == list.end() ? nullptr : &*found;
}

absl::Status notTheLatest(std::uint32_t latest) {
  return absl::AbortedError("base_revision: revision " + std::to_string(latest) + " is the latest");
}

// With the clinic's own exercises, every revision, so that the newest of each is among them.
absl::StatusOr<Catalogue> catalogueIn(HubTransaction& transaction, const Catalogue& catalogue) {
  std::vector<v1::OwnExercise> own;
  for (const VersionedRow& row : transaction.ownExercises()) {
    if (!own.emplace_back().ParseFromString(row.content))
      return absl::DataLossError("own exercise: not to be read");
  }
  return catalogue.with(own);
}

absl::Status measuresAreKnown(const v1::ProgrammeTemplate& value) {
  for (int i = 0; i < value.measures_size(); ++i) {
    if (MeasureTable::builtIn().find(value.measures(i).kind()) == nullptr)
      return absl::InvalidArgumentError("programme_template.measures[" + std::to_string(i) +
                                        "].kind: there is no such measure");
  }
  return absl::OkStatus();
}

absl::Status put(v1::TemplateBook& book, const v1::ProgrammeTemplate& value, std::uint32_t base) {
  v1::ProgrammeTemplate* kept = find(book, value.id());
  const std::uint32_t latest = kept == nullptr ? 0 : kept->revision();
  if (latest != base) return notTheLatest(latest);
  if (kept == nullptr && book.templates_size() >= kMostTemplates)
    return absl::ResourceExhaustedError(
        "programme_template: the clinic has as many as it may; withdraw one first");
  if (kept == nullptr) kept = book.add_templates();
  *kept = value;
  std::sort(book.mutable_templates()->begin(), book.mutable_templates()->end(),
            [](const v1::ProgrammeTemplate& a, const v1::ProgrammeTemplate& b) { return a.id() < b.id(); });
  return absl::OkStatus();
}

}  // namespace

absl::StatusOr<v1::ListTemplatesReply> ClinicLibrary::templates() {
  v1::ListTemplatesReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    auto book = bookIn(transaction);
    if (!book.ok()) return book.status();
    *reply.mutable_templates() = std::move(*book->mutable_templates());
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::PutTemplateReply> ClinicLibrary::putTemplate(const DeskCaller& caller,
                                                                const v1::PutTemplateRequest& request) {
  v1::ProgrammeTemplate value = request.programme_template();
  value.set_revision(request.base_revision() + 1);
  value.set_author_id(caller.therapist.id());
  value.set_author_name(caller.therapist.display_name());
  *value.mutable_written_at() = toTimestamp(m_hub->clock->wall());
  if (!isOwnTemplate(value))
    return absl::InvalidArgumentError("programme_template.id: is not a UUID version 7");
  if (absl::Status good = check(value); !good.ok())
    return absl::InvalidArgumentError("programme_template." + std::string(good.message()));
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    auto book = bookIn(transaction);
    if (!book.ok()) return book.status();
    const auto catalogue = catalogueIn(transaction, *m_hub->catalogue);
    if (!catalogue.ok()) return catalogue.status();
    if (absl::Status good = fitsCatalogue(value, *catalogue); !good.ok())
      return absl::InvalidArgumentError("programme_template." + std::string(good.message()));
    if (absl::Status good = measuresAreKnown(value); !good.ok()) return good;
    if (absl::Status done = put(*book, value, request.base_revision()); !done.ok()) return done;
    transaction.putSetting(kName, toBytes(*book));
    m_hub->audit->add(transaction,
                      {.action = "template.write", .who = caller.therapist.id(), .record = value.id()});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgeDesks("");
  v1::PutTemplateReply reply;
  *reply.mutable_programme_template() = std::move(value);
  return reply;
}

absl::StatusOr<v1::WithdrawTemplateReply> ClinicLibrary::withdrawTemplate(
    const DeskCaller& caller, const v1::WithdrawTemplateRequest& request) {
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    auto book = bookIn(transaction);
    if (!book.ok()) return book.status();
    auto& list = *book->mutable_templates();
    const auto found = std::find_if(list.begin(), list.end(), [&](const v1::ProgrammeTemplate& one) {
      return one.id() == request.template_id();
    });
    if (found == list.end()) return absl::NotFoundError("template_id: there is no such template");
    if (found->revision() != request.base_revision()) return notTheLatest(found->revision());
    list.erase(found);
    transaction.putSetting(kName, toBytes(*book));
    m_hub->audit->add(
        transaction,
        {.action = "template.withdraw", .who = caller.therapist.id(), .record = request.template_id()});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgeDesks("");
  return v1::WithdrawTemplateReply();
}

}  // namespace newel
