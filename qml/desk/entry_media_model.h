// The photo and the clip of the selected entry: from a file on this desk to the hub, into the draft, and back
// to be seen. An entry names a file only when the hub has all of it. Not here: cleaning
// (sync/common/media_clean.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <map>
#include <memory>
#include <set>
#include <string>

#include "core/records/media.pb.h"
#include "qml/desk/draft_model.h"
#include "qml/parts/clip_player.h"

namespace newel::desk {

class EntryMediaModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool hasPhoto READ hasPhoto NOTIFY changed)
  Q_PROPERTY(QString photo READ photo NOTIFY changed)  // an address; empty while it is fetched
  Q_PROPERTY(QString photoWords READ photoWords NOTIFY changed)
  Q_PROPERTY(bool hasClip READ hasClip NOTIFY changed)
  Q_PROPERTY(newel::parts::ClipContent* clip READ clip NOTIFY changed)  // null while it is fetched
  Q_PROPERTY(QString clipWords READ clipWords NOTIFY changed)
  Q_PROPERTY(QString captions READ captions NOTIFY changed)
  Q_PROPERTY(QString sending READ sending NOTIFY changed)  // "Sending to the hub: 40 %"; empty: nothing is
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(newel::parts::ClipPlayer* player READ player CONSTANT)

 public:
  EntryMediaModel(DraftModel& draft, const DeskContext& context, QObject* parent = nullptr);

  bool hasPhoto() const { return photoRef() != nullptr; }
  QString photo() const;
  QString photoWords() const;
  bool hasClip() const { return clipRef() != nullptr; }
  parts::ClipContent* clip() const;
  QString clipWords() const;
  QString captions() const;
  QString sending() const { return m_sending; }
  QString problem() const { return m_problem; }
  parts::ClipPlayer* player() { return &m_player; }

  // A path or a file: address. What it is its content says; one of a kind takes the former one's place.
  Q_INVOKABLE void attach(const QString& file);
  Q_INVOKABLE void removePhoto();
  Q_INVOKABLE void removeClip();
  Q_INVOKABLE void setPhotoWords(const QString& words);
  Q_INVOKABLE void setClipWords(const QString& words);
  Q_INVOKABLE void setCaptions(const QString& words);

 signals:
  void changed();

 private:
  struct Upload {
    std::string person_id;
    std::string entry_id;
    std::shared_ptr<const std::string> content;
    v1::MediaRef ref;
  };
  const v1::MediaRef* photoRef() const;
  const v1::MediaRef* clipRef() const;
  void follow();
  void fetch(const v1::MediaRef& ref);
  void send(const Upload& upload, std::uint64_t offset, bool only_ask);
  void sent(const Upload& upload);
  void stopSending(const QString& problem);
  std::shared_ptr<const std::string> contentOf(const v1::MediaRef* ref) const;
  std::string personId() const;

  DraftModel& m_draft;
  const DeskContext& m_context;
  parts::ClipPlayer m_player{parts::makeQtClipReader};
  std::map<std::string, std::shared_ptr<const std::string>> m_contents;  // by hash, of m_person
  mutable std::map<std::string, std::unique_ptr<parts::ClipContent>> m_clips;
  std::set<std::string> m_fetching;
  std::string m_person;
  std::string m_entry;
  QString m_sending;
  QString m_problem;
};

}  // namespace newel::desk
