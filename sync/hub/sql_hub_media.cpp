// Photos and clips: what is whole, whose it is, what is on its way, and the parts of both.
#include "sync/common/database.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

template <typename Found>
std::optional<MediaRow> mediaRow(Found rows) {
  if (!rows.next()) return std::nullopt;
  return MediaRow{rows.text(0), rows.text(1), static_cast<int>(rows.number(2)),
                  static_cast<std::uint64_t>(rows.number(3)), rows.number(4) != 0};
}

}  // namespace

template <typename Session>
std::optional<MediaRow> SqlHubTransaction<Session>::media(const std::string& sha256) {
  return mediaRow(m_db.query("SELECT id, sha256, type, size, 0 FROM media WHERE sha256 = ?", Blob{sha256}));
}

template <typename Session>
void SqlHubTransaction<Session>::addMedia(const MediaRow& row, absl::Time at) {
  m_db.run("INSERT INTO media (id, sha256, type, size, at) VALUES (?, ?, ?, ?, ?)", row.id, Blob{row.sha256},
           row.type, row.size, absl::ToUnixMicros(at));
}

template <typename Session>
std::optional<MediaRow> SqlHubTransaction<Session>::mediaOf(const std::string& person_id,
                                                            const std::string& sha256) {
  return mediaRow(
      m_db.query("SELECT media.id, media.sha256, media.type, media.size, media_link.named FROM media JOIN "
                 "media_link ON media_link.media_id = media.id WHERE media_link.person_id = ? AND "
                 "media.sha256 = ?",
                 person_id, Blob{sha256}));
}

template <typename Session>
void SqlHubTransaction<Session>::addMediaLink(const std::string& person_id, const std::string& media_id,
                                              absl::Time at) {
  m_db.run(
      "INSERT INTO media_link (person_id, media_id, named, at) VALUES (?, ?, 0, ?) ON CONFLICT DO NOTHING",
      person_id, media_id, absl::ToUnixMicros(at));
}

template <typename Session>
void SqlHubTransaction<Session>::markMediaNamed(const std::string& person_id, const std::string& media_id) {
  m_db.run("UPDATE media_link SET named = 1 WHERE person_id = ? AND media_id = ?", person_id, media_id);
}

template <typename Session>
std::optional<MediaUploadRow> SqlHubTransaction<Session>::mediaUpload(const std::string& person_id,
                                                                      const std::string& sha256) {
  auto rows = m_db.query("SELECT id, size, have FROM media_upload WHERE person_id = ? AND sha256 = ?",
                         person_id, Blob{sha256});
  if (!rows.next()) return std::nullopt;
  return MediaUploadRow{rows.text(0), person_id, sha256, static_cast<std::uint64_t>(rows.number(1)),
                        static_cast<std::uint64_t>(rows.number(2))};
}

template <typename Session>
void SqlHubTransaction<Session>::addMediaUpload(const MediaUploadRow& row, absl::Time at) {
  m_db.run("INSERT INTO media_upload (id, person_id, sha256, size, have, at) VALUES (?, ?, ?, ?, ?, ?)",
           row.id, row.person_id, Blob{row.sha256}, row.size, row.have, absl::ToUnixMicros(at));
}

template <typename Session>
void SqlHubTransaction<Session>::addMediaPart(const MediaUploadRow& upload, const std::string& content,
                                              absl::Time at) {
  m_db.run("INSERT INTO media_part (media_id, at_byte, content) VALUES (?, ?, ?)", upload.id, upload.have,
           Blob{content});
  m_db.run("UPDATE media_upload SET have = ?, at = ? WHERE id = ?", upload.have + content.size(),
           absl::ToUnixMicros(at), upload.id);
}

template <typename Session>
void SqlHubTransaction<Session>::dropMediaUpload(const std::string& id) {
  m_db.run("DELETE FROM media_part WHERE media_id = ?1 AND NOT EXISTS (SELECT 1 FROM media WHERE id = ?1)",
           id);
  m_db.run("DELETE FROM media_upload WHERE id = ?", id);
}

template <typename Session>
std::optional<MediaPartRow> SqlHubTransaction<Session>::mediaPart(const std::string& media_id,
                                                                  std::uint64_t offset) {
  auto rows = m_db.query(
      "SELECT at_byte, content FROM media_part WHERE media_id = ? AND at_byte <= ? ORDER BY at_byte DESC "
      "LIMIT "
      "1",
      media_id, offset);
  if (!rows.next()) return std::nullopt;
  return MediaPartRow{static_cast<std::uint64_t>(rows.number(0)), rows.text(1)};
}

template <typename Session>
MediaWaiting SqlHubTransaction<Session>::mediaWaiting(const std::string& person_id) {
  auto rows = m_db.query(
      "SELECT (SELECT COUNT(*) FROM media_upload WHERE person_id = ?1), "
      "CAST((SELECT COALESCE(SUM(size), 0) FROM media_upload WHERE person_id = ?1) + "
      "(SELECT COALESCE(SUM(media.size), 0) FROM media JOIN media_link ON media_link.media_id = media.id "
      "WHERE media_link.person_id = ?1 AND media_link.named = 0) AS BIGINT)",
      person_id);
  if (!rows.next()) return {};
  return {static_cast<std::uint64_t>(rows.number(0)), static_cast<std::uint64_t>(rows.number(1))};
}

template <typename Session>
void SqlHubTransaction<Session>::dropStaleMedia(absl::Time upload_by, absl::Time link_by) {
  const std::int64_t upload_at = absl::ToUnixMicros(upload_by);
  m_db.run("DELETE FROM media_part WHERE media_id IN (SELECT id FROM media_upload WHERE at <= ?)", upload_at);
  m_db.run("DELETE FROM media_upload WHERE at <= ?", upload_at);
  m_db.run("DELETE FROM media_link WHERE named = 0 AND at <= ?", absl::ToUnixMicros(link_by));
  dropUnusedMedia();
}

template <typename Session>
void SqlHubTransaction<Session>::dropMediaOf(const std::string& person_id) {
  m_db.run("DELETE FROM media_part WHERE media_id IN (SELECT id FROM media_upload WHERE person_id = ?)",
           person_id);
  m_db.run("DELETE FROM media_upload WHERE person_id = ?", person_id);
  m_db.run("DELETE FROM media_link WHERE person_id = ?", person_id);
  dropUnusedMedia();
}

// What somebody else has too stays.
template <typename Session>
void SqlHubTransaction<Session>::dropUnusedMedia() {
  m_db.run(
      "DELETE FROM media_part WHERE media_id IN (SELECT id FROM media WHERE NOT EXISTS (SELECT 1 FROM "
      "media_link WHERE media_link.media_id = media.id))");
  m_db.run(
      "DELETE FROM media WHERE NOT EXISTS (SELECT 1 FROM media_link WHERE media_link.media_id = media.id)");
}

// The members of this file, for both engines.
template class SqlHubTransaction<Database>;
template class SqlHubTransaction<PgSession>;

}  // namespace newel
