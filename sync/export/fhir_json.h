// Pieces of FHIR JSON, and the bundle they go into. FHIR knows no empty string, list or object: whatever is
// empty is left out here, in one place. For sync/export alone.
#pragma once

#include <absl/time/time.h>

#include <nlohmann/json.hpp>
#include <string>

namespace newel {

// Keys in the order they were put.
using Json = nlohmann::ordered_json;

// `words` as a FHIR string: without the control characters that it may not have. Empty when nothing is left
// but white space.
std::string fhirText(const std::string& words);
// Nothing is put for what is empty.
void putText(Json& object, const char* key, const std::string& words);
void putList(Json& object, const char* key, Json list);

Json reference(const std::string& id);  // to a resource of the same bundle, by its fullUrl
Json identifier(const std::string& system, const std::string& value);
// Someone who has no resource here: by the hub's account, with their name only where it is not empty.
Json practitioner(const std::string& account_id, const std::string& name);
// A CodeableConcept.
Json textConcept(const std::string& text);
Json codeConcept(const std::string& system, const std::string& code, const std::string& text);
Json quantity(double value, const std::string& unit, const std::string& ucum);
// `type`: "valueString" and so on.
Json extension(const std::string& name, const char* type, Json value);
Json part(const char* name, const char* type, Json value);  // of an extension in parts
Json partsExtension(const std::string& name, Json parts);
Json resource(const char* type, const std::string& id);
Json annotation(const std::string& words, absl::Time at);

// `json` as a value that is text already, for what stands in thousands of resources: nothing can be put into
// it any more, and nobody but BundleText reads it.
Json written(const Json& json);

// Collects resources as the entries of a bundle. Written as they come, so that a long history is never held
// twice.
class BundleText {
 public:
  void add(const Json& resource);
  int size() const { return m_size; }
  // {"resourceType":"Bundle", ...}, of type collection. `made_at` as an instant.
  std::string finish(absl::Time made_at, const std::string& id);

 private:
  std::string m_entries;
  int m_size = 0;
};

}  // namespace newel
