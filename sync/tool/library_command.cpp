#include <algorithm>
#include <cctype>
#include <functional>
#include <ostream>
#include <set>

#include "core/library/catalogue.h"
#include "core/library/default_entry.h"
#include "core/library/wording.h"
#include "core/safety/rule_book.h"
#include "sync/tool/library_text.h"
#include "sync/tool/person_options.h"
#include "sync/tool/trade_commands.h"

namespace newel::tool {
namespace {

absl::StatusOr<Catalogue> catalogueFrom(const std::string& folder) {
  if (folder.empty()) return Catalogue::builtIn();
  return Catalogue::load(folder);
}

std::string lowered(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

template <typename List>
bool contains(const List& list, int value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

// What a listed exercise must be; each filter is an option that was given.
class Filters {
 public:
  static absl::StatusOr<Filters> from(const LibraryOptions& options, const Catalogue& catalogue) {
    Filters filters;
    absl::Status status = absl::OkStatus();
    const auto add = [&](const google::protobuf::EnumDescriptor* type, const std::string& option,
                         const std::string& name, const std::function<bool(const v1::Exercise&, int)>& fits) {
      if (name.empty() || !status.ok()) return;
      const auto value = fromShortName(type, option, name);
      if (!value.ok()) {
        status = value.status();
        return;
      }
      filters.m_all.push_back([fits, wanted = *value](const v1::Exercise& e) { return fits(e, wanted); });
    };
    add(v1::Purpose_descriptor(), "--purpose", options.purpose,
        [](const auto& e, int v) { return e.purpose() == v; });
    add(v1::Position_descriptor(), "--position", options.position,
        [](const auto& e, int v) { return e.position() == v; });
    add(v1::Equipment_descriptor(), "--equipment", options.equipment,
        [](const auto& e, int v) { return contains(e.equipment(), v); });
    add(v1::Support_descriptor(), "--support", options.support,
        [](const auto& e, int v) { return contains(e.supports(), v); });
    add(v1::LimbLossLevel_descriptor(), "--usual-for", options.usual_for,
        [](const auto& e, int v) { return contains(e.fit().usual_levels(), v); });
    add(v1::MobilityLevel_descriptor(), "--mobility", options.mobility,
        [](const auto& e, int v) { return e.fit().least_mobility() <= v; });
    if (!status.ok()) return status;
    if (!options.tag.empty()) {
      filters.m_all.push_back([tag = options.tag](const v1::Exercise& e) {
        return std::find(e.tags().begin(), e.tags().end(), tag) != e.tags().end();
      });
    }
    if (!options.words.empty()) filters.addWords(options, catalogue);
    return filters;
  }

  bool pass(const v1::Exercise& exercise) const {
    return std::all_of(m_all.begin(), m_all.end(), [&](const auto& filter) { return filter(exercise); });
  }

 private:
  void addWords(const LibraryOptions& options, const Catalogue& catalogue) {
    m_all.push_back([&catalogue, &options](const v1::Exercise& e) {
      const auto* words = wordsOrEnglish(catalogue, e.id(), options.language);
      const std::string text = words == nullptr ? "" : words->title() + ' ' + words->purpose();
      return lowered(text + ' ' + e.id()).find(lowered(options.words)) != std::string::npos;
    });
  }

  std::vector<std::function<bool(const v1::Exercise&)>> m_all;
};

struct Row {
  const v1::Exercise* exercise = nullptr;
  std::vector<v1::Finding> findings;  // only when asked for
};

absl::StatusOr<std::vector<Row>> rowsOf(const LibraryOptions& options, const Catalogue& catalogue) {
  const auto filters = Filters::from(options, catalogue);
  if (!filters.ok()) return filters.status();
  const auto person = personFrom(options);
  if (!person.ok()) return person.status();
  std::vector<Row> rows;
  for (const auto& exercise : catalogue.exercises()) {
    if (!filters->pass(exercise)) continue;
    Row row;
    row.exercise = &exercise;
    if (options.findings || options.allowed) {
      auto findings = RuleBook::builtIn().check(defaultEntry(exercise, *person), *person, catalogue);
      if (!findings.ok()) return findings.status();
      row.findings = *std::move(findings);
      const bool blocked = !row.findings.empty() && row.findings.front().effect() == v1::EFFECT_BLOCK;
      if (options.allowed && blocked) continue;
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

std::string findingText(const Row& row) {
  if (row.findings.empty()) return "-";
  const auto& first = row.findings.front();
  return shortName(v1::Effect_descriptor(), first.effect()) + ": " + first.rule_id() +
         (row.findings.size() > 1 ? " and " + std::to_string(row.findings.size() - 1) + " more" : "");
}

void printList(const std::vector<Row>& rows, const LibraryOptions& options, const Catalogue& catalogue,
               std::ostream& out) {
  const bool findings = options.findings || options.allowed;
  std::vector<std::string> head = {"exercise", "title", "group", "position", "from", "dose"};
  if (findings) head.emplace_back("rules say");
  Table table(head);
  for (const auto& row : rows) {
    const auto* words = wordsOrEnglish(catalogue, row.exercise->id(), options.language);
    const bool fell_back = words == nullptr || !servesLanguage(words->language(), options.language);
    std::vector<std::string> cells = {
        row.exercise->id(),
        (words == nullptr ? row.exercise->id() : words->title()) +
            (fell_back && words != nullptr ? " [" + words->language() + "]" : ""),
        shortName(v1::Purpose_descriptor(), row.exercise->purpose()),
        shortName(v1::Position_descriptor(), row.exercise->position()),
        shortName(v1::MobilityLevel_descriptor(), row.exercise->fit().least_mobility()),
        doseText(row.exercise->default_dose())};
    if (findings) cells.push_back(findingText(row));
    table.row(std::move(cells));
  }
  table.print(out);
  out << rows.size() << " exercises\n";
}

Json jsonOfList(const std::vector<Row>& rows, const LibraryOptions& options, const Catalogue& catalogue) {
  Json json = Json::array();
  for (const auto& row : rows) {
    const auto* words = wordsOrEnglish(catalogue, row.exercise->id(), options.language);
    Json one = {{"id", row.exercise->id()},
                {"revision", row.exercise->revision()},
                {"title", words == nullptr ? "" : words->title()},
                {"language", words == nullptr ? "" : words->language()},
                {"purpose", shortName(v1::Purpose_descriptor(), row.exercise->purpose())}};
    if (options.findings || options.allowed) {
      one["findings"] = Json::array();
      for (const auto& finding : row.findings) one["findings"].push_back(jsonOf(finding));
    }
    json.push_back(std::move(one));
  }
  return json;
}

int listCards(const LibraryOptions& options, const Catalogue& catalogue, Output output) {
  Json json = Json::array();
  Table table({"card", "title", "days", "to write down"});
  for (const auto& card : catalogue.cards()) {
    const auto* words = cardWordsOrEnglish(catalogue, card.id(), options.language);
    const bool fell_back = words == nullptr || !servesLanguage(words->language(), options.language);
    table.row({card.id(), (words == nullptr ? card.id() : words->title()) + (fell_back ? " [en]" : ""),
               std::to_string(card.usual_days().days_size()) + " a week",
               shortName(v1::AdviceLog_descriptor(), card.log())});
    json.push_back(jsonOfCard(card, catalogue, options.language));
  }
  if (output.json) {
    printJson(json, output.out);
    return kFine;
  }
  table.print(output.out);
  output.out << catalogue.cards().size() << " cards\n";
  return kFine;
}

int printOne(const LibraryOptions& options, const Catalogue& catalogue, Output output) {
  if (const auto* card = catalogue.card(options.exercise)) {
    if (output.json) {
      printJson(jsonOfCard(*card, catalogue, options.language), output.out);
    } else {
      printCard(*card, catalogue, options.language, output.out);
    }
    return kFine;
  }
  const auto* exercise = catalogue.find(options.exercise);
  if (exercise == nullptr) {
    return complain(output.err, absl::NotFoundError("\"" + options.exercise + "\" is not in the catalogue"));
  }
  const auto person = personFrom(options);
  if (!person.ok()) return complain(output.err, person.status());
  const auto findings = RuleBook::builtIn().check(defaultEntry(*exercise, *person), *person, catalogue);
  if (!findings.ok()) return complain(output.err, findings.status());
  const ExercisePage page(*exercise, *person, catalogue, options.language, *findings);
  if (output.json) {
    printJson(page.json(), output.out);
  } else {
    page.print(output.out);
  }
  return kFine;
}

}  // namespace

int runLibrary(const LibraryOptions& options, Output output) {
  const auto catalogue = catalogueFrom(options.folder);
  if (!catalogue.ok()) return complain(output.err, catalogue.status());
  if (!options.exercise.empty()) return printOne(options, *catalogue, output);
  if (options.cards) return listCards(options, *catalogue, output);
  const auto rows = rowsOf(options, *catalogue);
  if (!rows.ok()) return complain(output.err, rows.status());
  if (output.json) {
    printJson(jsonOfList(*rows, options, *catalogue), output.out);
  } else {
    printList(*rows, options, *catalogue, output.out);
  }
  return kFine;
}

}  // namespace newel::tool
