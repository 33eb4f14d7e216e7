// The draft of one person's next programme: its record, what can be undone, and its file on this desk.
// Not here: whether it may be signed (core/review), and how it is shown (draft_model.h).
#pragma once

#include <absl/status/status.h>
#include <absl/time/civil_time.h>

#include <QtCore/QString>
#include <functional>
#include <string>
#include <vector>

#include "core/library/settings.h"
#include "core/records/programme.pb.h"

namespace newel::desk {

class ProgrammeDraft {
 public:
  const v1::Programme& value() const { return m_value; }
  // The number this draft follows; 0: it is the first.
  std::uint32_t baseNumber() const { return m_base_number; }
  void setBaseNumber(std::uint32_t number) { m_base_number = number; }

  // Throws away what could be undone.
  void begin(v1::Programme value, std::uint32_t base_number);
  // One change by the therapist. Changes with the same key one after another are undone together, so that a
  // sentence goes back as a whole. An empty key is never joined.
  void change(const std::string& key, const std::function<void(v1::Programme&)>& edit);
  bool canUndo() const { return !m_past.empty(); }
  bool canRedo() const { return !m_future.empty(); }
  void undo();
  void redo();

  // One file a person, written new and renamed, so that a crash leaves the old or the new one. The folder is
  // made, for its owner's eyes only. kUnavailable when it cannot be written.
  absl::Status save(const QString& folder) const;
  // kNotFound: none was kept. kDataLoss: it cannot be read; it is set aside with ".unreadable" after its
  // name.
  absl::Status load(const QString& folder, const std::string& person_id);
  static void discard(const QString& folder, const std::string& person_id);

 private:
  v1::Programme m_value;
  std::uint32_t m_base_number = 0;
  std::vector<v1::Programme> m_past;
  std::vector<v1::Programme> m_future;
  std::string m_last_key;
};

// Days of a new programme, both ends included. Source: common practice, no source.
inline constexpr int kFirstDays = 28;

// What a therapist starts from: the last programme's entries, advice, cards, wear plan and limits, or none
// and the clinic's limits ("pain-stop" and "pain-rise" of its settings); days from `today`.
v1::Programme startingDraft(const v1::Programme* last, const SettingValues& settings,
                            const std::string& person_id, const std::string& zone, absl::CivilDay today);

}  // namespace newel::desk
