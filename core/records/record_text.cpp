#include "core/records/record_text.h"

#include <google/protobuf/io/coded_stream.h>
#include <google/protobuf/io/tokenizer.h>
#include <google/protobuf/io/zero_copy_stream_impl_lite.h>
#include <google/protobuf/text_format.h>
#include <google/protobuf/util/json_util.h>

namespace newel {
namespace {

class FirstError : public google::protobuf::io::ErrorCollector {
 public:
  void AddError(int line, google::protobuf::io::ColumnNumber column, const std::string& message) override {
    if (!m_text.empty()) return;
    // The parser counts from 0; people count from 1. -1 means "the whole file".
    m_text = std::to_string(line + 1) + ":" + std::to_string(column + 1) + ": " + message;
  }
  const std::string& text() const { return m_text; }

 private:
  std::string m_text;
};

}  // namespace

absl::Status parseText(const std::string& text, const std::string& name, google::protobuf::Message& message) {
  FirstError error;
  google::protobuf::TextFormat::Parser parser;
  parser.RecordErrorsTo(&error);
  message.Clear();
  if (parser.ParseFromString(text, &message)) return absl::OkStatus();
  return absl::InvalidArgumentError(name + ":" + error.text());
}

absl::Status parseTextOrJson(const std::string& text, const std::string& name,
                             google::protobuf::Message& message) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  if (first == std::string::npos || text[first] != '{') return parseText(text, name, message);
  message.Clear();
  const auto status = google::protobuf::util::JsonStringToMessage(text, &message);
  if (status.ok()) return absl::OkStatus();
  std::string reason(status.message().data(), status.message().size());
  for (char& c : reason) {
    if (c == '\n') c = ' ';
  }
  return absl::InvalidArgumentError(name + ": " + reason);
}

std::string toJson(const google::protobuf::Message& message) {
  google::protobuf::util::JsonPrintOptions options;
  options.add_whitespace = true;
  options.preserve_proto_field_names = true;
  std::string text;
  // Fails only for malformed well-known types, which check() refuses first.
  if (!google::protobuf::util::MessageToJsonString(message, &text, options).ok()) return "{}\n";
  return text;
}

std::string toBytes(const google::protobuf::Message& message) {
  std::string bytes;
  {
    google::protobuf::io::StringOutputStream stream(&bytes);
    google::protobuf::io::CodedOutputStream coded(&stream);
    coded.SetSerializationDeterministic(true);
    message.SerializeToCodedStream(&coded);
  }
  return bytes;
}

}  // namespace newel
