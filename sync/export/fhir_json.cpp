#include "sync/export/fhir_json.h"

#include <absl/strings/str_cat.h>

#include <algorithm>
#include <utility>

#include "sync/export/fhir_codes.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// A newer program or a file may have put in what is no UTF-8; it is marked so and holds up nothing else.
std::string dump(const Json& json) { return json.dump(-1, ' ', false, Json::error_handler_t::replace); }

bool isPlain(char c) { return c >= 0x20 && c < 0x7f && c != '"' && c != '\\'; }

// Nearly every string of a bundle is plain ASCII: those are copied whole, the others left to the library.
void appendString(const std::string& text, std::string& out) {
  if (!std::all_of(text.begin(), text.end(), isPlain)) {
    out += dump(Json(text));
    return;
  }
  out += '"';
  out += text;
  out += '"';
}

// As dump(), several times as fast.
void append(const Json& json, std::string& out) {
  if (json.is_string()) return appendString(json.get_ref<const std::string&>(), out);
  if (json.is_binary()) {  // written()
    out.append(json.get_binary().begin(), json.get_binary().end());
    return;
  }
  if (!json.is_structured()) {
    out += dump(json);
    return;
  }
  const bool object = json.is_object();
  char between = object ? '{' : '[';
  if (json.empty()) out += between;
  for (auto one = json.begin(); one != json.end(); ++one) {
    out += between;
    between = ',';
    if (object) {
      appendString(one.key(), out);
      out += ':';
    }
    append(*one, out);
  }
  out += object ? '}' : ']';
}

}  // namespace

std::string fhirText(const std::string& words) {
  std::string text;
  text.reserve(words.size());
  bool blank = true;
  for (const char c : words) {
    const auto octet = static_cast<unsigned char>(c);
    if ((octet < 0x20 && c != '\t' && c != '\n' && c != '\r') || octet == 0x7f) continue;
    blank = blank && (c == ' ' || c == '\t' || c == '\n' || c == '\r');
    text += c;
  }
  return blank ? "" : text;
}

void putText(Json& object, const char* key, const std::string& words) {
  std::string text = fhirText(words);
  if (!text.empty()) object[key] = std::move(text);
}

void putList(Json& object, const char* key, Json list) {
  if (!list.empty()) object[key] = std::move(list);
}

Json reference(const std::string& id) { return {{"reference", absl::StrCat("urn:uuid:", id)}}; }

Json identifier(const std::string& system, const std::string& value) {
  return {{"system", system}, {"value", value}};
}

Json practitioner(const std::string& account_id, const std::string& name) {
  Json json = {{"type", "Practitioner"}};
  if (!account_id.empty()) json["identifier"] = identifier(identifierUrl("account"), account_id);
  putText(json, "display", name);
  return json;
}

Json textConcept(const std::string& text) { return {{"text", fhirText(text)}}; }

Json codeConcept(const std::string& system, const std::string& code, const std::string& text) {
  Json json = {{"coding", Json::array({{{"system", system}, {"code", code}}})}};
  putText(json, "text", text);
  return json;
}

Json quantity(double value, const std::string& unit, const std::string& ucum) {
  Json json;
  // A whole number without a point, as people write it.
  const auto whole = static_cast<std::int64_t>(value);
  if (static_cast<double>(whole) == value) {
    json["value"] = whole;
  } else {
    json["value"] = value;
  }
  putText(json, "unit", unit);
  json["system"] = kUcum;
  json["code"] = ucum;
  return json;
}

Json extension(const std::string& name, const char* type, Json value) {
  return {{"url", extensionUrl(name)}, {type, std::move(value)}};
}

Json part(const char* name, const char* type, Json value) {
  return {{"url", name}, {type, std::move(value)}};
}

Json partsExtension(const std::string& name, Json parts) {
  return {{"url", extensionUrl(name)}, {"extension", std::move(parts)}};
}

Json resource(const char* type, const std::string& id) { return {{"resourceType", type}, {"id", id}}; }

Json annotation(const std::string& words, absl::Time at) {
  return {{"time", isoInstant(at)}, {"text", fhirText(words)}};
}

Json written(const Json& json) {
  std::string text;
  append(json, text);
  return Json::binary({text.begin(), text.end()});
}

void BundleText::add(const Json& resource) {
  const std::string url = absl::StrCat("urn:uuid:", resource.at("id").get_ref<const std::string&>());
  absl::StrAppend(&m_entries, m_size == 0 ? "\n" : ",\n", "{\"fullUrl\":\"", url, "\",\"resource\":");
  append(resource, m_entries);
  m_entries += '}';
  ++m_size;
}

std::string BundleText::finish(absl::Time made_at, const std::string& id) {
  Json meta;
  meta["extension"] = Json::array({extension("notice", "valueString", kLoincNotice)});
  return absl::StrCat("{\"resourceType\":\"Bundle\",\"id\":\"", id, "\",\"meta\":", dump(meta),
                      ",\"type\":\"collection\",\"timestamp\":\"", isoInstant(made_at), "\",\"entry\":[",
                      m_entries, "\n]}\n");
}

}  // namespace newel
