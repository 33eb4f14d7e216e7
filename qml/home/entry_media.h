// What the pages show of the photo and clip of an entry or a message, as rows for EntryMedia.qml.
#pragma once

#include <QtCore/QVariantMap>
#include <map>
#include <memory>
#include <string>

#include "core/records/message.pb.h"
#include "core/records/programme.pb.h"
#include "qml/parts/clip_content.h"
#include "sync/home/home_engine.h"

namespace newel::home {

// UI thread. Keeps small what was looked at last, so that a page that is built anew reads nothing again; what
// it gave out stays valid as long as it lives.
class MediaRows {
 public:
  explicit MediaRows(const HomeEngine& engine) : m_engine(engine) {}
  // Empty where the entry, or the message, has neither.
  QVariantMap rowOf(const v1::Entry& entry) { return row(entry); }
  QVariantMap rowOf(const v1::Message& message) { return row(message); }

 private:
  template <typename Record>
  QVariantMap row(const Record& record);
  QString photoOf(const v1::MediaRef& photo);
  parts::ClipContent* clipOf(const v1::MediaRef& clip);

  const HomeEngine& m_engine;
  std::map<std::string, QString> m_photos;  // addresses by hash
  std::map<std::string, std::unique_ptr<parts::ClipContent>> m_clips;
};

}  // namespace newel::home
