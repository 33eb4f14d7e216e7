// One message, photo, clip or hold order to several people: written once, looked at once more, sent to each
// by itself, and who has not received or seen it. What went wrong for one stops nobody else's; trying again
// sends to nobody twice. Not here: choosing whom (caseload_model.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/records/media.pb.h"
#include "qml/desk/caseload_model.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "sync/common/media_clean.h"

namespace newel::desk {

class ManyModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool hold READ hold WRITE setHold NOTIFY changed)  // a hold order, not a message
  Q_PROPERTY(QString text READ text WRITE setText NOTIFY changed)
  Q_PROPERTY(bool urgent READ urgent WRITE setUrgent NOTIFY changed)
  Q_PROPERTY(QString mediaName READ mediaName NOTIFY changed)  // of the file; empty: none
  Q_PROPERTY(QString photo READ photo NOTIFY changed)          // an address; empty: none, or a clip
  Q_PROPERTY(bool isClip READ isClip NOTIFY changed)
  Q_PROPERTY(QString mediaWords READ mediaWords WRITE setMediaWords NOTIFY changed)
  Q_PROPERTY(QString captions READ captions WRITE setCaptions NOTIFY changed)
  Q_PROPERTY(QString mediaProblem READ mediaProblem NOTIFY changed)
  Q_PROPERTY(int count READ count NOTIFY changed)  // of people
  Q_PROPERTY(QString names READ names NOTIFY changed)
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)  // empty: ready to be looked at once more
  Q_PROPERTY(bool reviewing READ reviewing NOTIFY changed)
  Q_PROPERTY(bool begun READ begun NOTIFY changed)      // sending has begun: nothing can be changed any more
  Q_PROPERTY(bool sending READ sending NOTIFY changed)  // and goes on
  Q_PROPERTY(QString progress READ progress NOTIFY changed)
  Q_PROPERTY(int failures READ failures NOTIFY changed)
  // {name, limbs, state, words}, those first who need something: failed, waiting, not arrived, not seen,
  // seen.
  Q_PROPERTY(QVariantList people READ people NOTIFY changed)

 public:
  enum State { Failed, Waiting, Sent, Arrived, Seen };
  Q_ENUM(State)

  explicit ManyModel(DeskContext& context, QObject* parent = nullptr);

  // Begins anew for these; what was sent before is no longer followed here.
  void begin(const std::vector<CaseloadModel::ChosenPerson>& people, bool hold);
  void forget();  // nobody is signed in
  // Something of this person changed at the hub; empty: perhaps of everybody.
  void nudge(const std::string& person_id);

  bool hold() const { return m_hold; }
  void setHold(bool hold);
  QString text() const { return m_text; }
  void setText(const QString& text);
  bool urgent() const { return m_urgent; }
  void setUrgent(bool urgent);
  QString mediaName() const { return m_media_name; }
  QString photo() const { return m_photo; }
  bool isClip() const;
  QString mediaWords() const { return m_media_words; }
  void setMediaWords(const QString& words);
  QString captions() const { return m_captions; }
  void setCaptions(const QString& captions);
  QString mediaProblem() const { return m_media_problem; }
  int count() const { return static_cast<int>(m_people.size()); }
  QString names() const;
  QString whyNot() const;
  bool reviewing() const { return m_reviewing; }
  bool begun() const { return m_begun; }
  bool sending() const { return m_at.has_value(); }
  QString progress() const;
  int failures() const;
  QVariantList people() const;

  Q_INVOKABLE void attach(const QString& file);  // a path, or a file: address
  Q_INVOKABLE void detach();
  Q_INVOKABLE void review();
  Q_INVOKABLE void change();  // back from the review
  Q_INVOKABLE void send();    // to everybody whom it has not reached; again after failures
  Q_INVOKABLE void stop();    // after the one under way; the others wait
  Q_INVOKABLE void look();    // how far it got, from the hub

 signals:
  void changed();

 private:
  struct Recipient {
    std::string id;
    QString name;
    QString limbs;
    std::string record_id;  // of the message or order, made once
    State state = Waiting;
    QString words;
  };

  void next();
  void sendTo(std::size_t at);
  void sendPart(std::size_t at, std::uint64_t offset, bool only_ask);
  void sendRecord(std::size_t at);
  void ended(std::size_t at, const absl::Status& status);
  void lookAt(std::size_t at);
  void reached(Recipient& one, const std::vector<v1::Receipt>& receipts) const;
  v1::MediaRef mediaRef() const;

  DeskContext& m_context;
  std::vector<Recipient> m_people;
  bool m_hold = false;
  QString m_text;
  bool m_urgent = false;
  std::shared_ptr<const CleanMedia> m_media;
  std::string m_media_sha256;
  QString m_media_name;
  QString m_photo;
  QString m_media_words;
  QString m_captions;
  QString m_media_problem;
  bool m_reviewing = false;
  bool m_begun = false;
  std::optional<std::size_t> m_at;  // who is being sent to
  bool m_stop = false;
  int m_turn = 0;  // of begin(): answers to an earlier one are nobody's
};

}  // namespace newel::desk
