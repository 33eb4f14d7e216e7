#include "sync/hub/audit_trail.h"

#include <gtest/gtest.h>

#include "sync/common/text_codes.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

const char* const kFirst = R"({"a":"login","n":1,"t":"2026-11-02T09:00:00Z"})";
const char* const kSecond = R"({"a":"plan.push","n":2,"t":"2026-11-02T09:05:00Z"})";

// h_n = SHA-256(h_(n-1) || entry): computed by hand with another SHA-256 (Python's hashlib).
TEST(AuditTrail, chainGivesTheNotedVectors) {
  const std::string first = chainHash(std::string(32, '\0'), kFirst);
  EXPECT_EQ(toHex(first), "9281804a05f1aea246b81209ad8e9fb9b35b94eda42ea520b80043c90c89e405");
  EXPECT_EQ(toHex(chainHash(first, kSecond)),
            "99117918b65624d665aa83de52dcaf493586298d907b563f73ac72a9a77772bf");
}

// RFC 8785: keys sorted, no spaces, two-character escapes, other controls as \u00xx in lower case.
TEST(AuditTrail, entriesAreCanonicalJson) {
  const absl::Time at = absl::FromUnixSeconds(1793610000);  // 2026-11-02T09:00:00Z
  EXPECT_EQ(auditEntry({.action = "login"}, 1, at), kFirst);
  EXPECT_EQ(auditEntry({.action = "x", .who = "w", .person = "p", .record = "r", .field = "f"}, 7, at),
            R"({"a":"x","f":"f","n":7,"p":"p","r":"r","t":"2026-11-02T09:00:00Z","w":"w"})");
  EXPECT_EQ(auditEntry({.action = "a\n\"\\\x1b[31m\u00e9"}, 1, at),
            "{\"a\":\"a\\n\\\"\\\\\\u001b[31m\u00e9\",\"n\":1,\"t\":\"2026-11-02T09:00:00Z\"}");
}

class AuditTampering : public testing::Test {
 protected:
  AuditTampering() {
    std::string hash(32, '\0');
    for (std::uint64_t n = 1; n <= 5; ++n) {
      AuditRow row{
          n, auditEntry({.action = "person.see", .who = "w" + std::to_string(n)}, n, absl::UnixEpoch()), ""};
      row.hash = hash = chainHash(hash, row.entry);
      m_rows.push_back(row);
    }
    m_head = {5, hash};
  }
  bool found(const std::vector<AuditRow>& rows) const { return absl::IsDataLoss(verifyAudit(rows, m_head)); }
  std::vector<AuditRow> m_rows;
  AuditHead m_head;
};

TEST_F(AuditTampering, anUntouchedChainHolds) {
  EXPECT_EQ(verifyAudit(m_rows, m_head), absl::OkStatus());
  EXPECT_EQ(verifyAudit(m_rows, std::nullopt), absl::OkStatus());
  EXPECT_EQ(verifyAudit({}, std::nullopt), absl::OkStatus());
}

TEST_F(AuditTampering, aFlippedByteIsFound) {
  for (std::size_t i = 0; i < m_rows.size(); ++i) {
    auto rows = m_rows;
    rows[i].entry[6] = static_cast<char>(rows[i].entry[6] ^ 1);
    EXPECT_TRUE(found(rows)) << i;
    rows = m_rows;
    rows[i].hash[3] = static_cast<char>(rows[i].hash[3] ^ 1);
    EXPECT_TRUE(found(rows)) << i;
  }
}

TEST_F(AuditTampering, aDroppedLineIsFound) {
  for (std::size_t i = 0; i < m_rows.size(); ++i) {
    auto rows = m_rows;
    rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(i));
    EXPECT_TRUE(found(rows)) << i;
  }
}

TEST_F(AuditTampering, swappedLinesAreFound) {
  for (std::size_t i = 0; i + 1 < m_rows.size(); ++i) {
    auto rows = m_rows;
    std::swap(rows[i].entry, rows[i + 1].entry);
    EXPECT_TRUE(found(rows)) << i;
    rows = m_rows;
    std::swap(rows[i], rows[i + 1]);
    EXPECT_TRUE(found(rows)) << i;
  }
}

TEST_F(AuditTampering, anInsertedLineIsFound) {
  auto rows = m_rows;
  AuditRow forged = rows[2];
  forged.n = 3;
  rows.insert(rows.begin() + 2, forged);
  EXPECT_TRUE(found(rows));
}

TEST_F(AuditTampering, aCutTailIsFoundAgainstAHeadKeptElsewhere) {
  auto rows = m_rows;
  rows.pop_back();
  EXPECT_EQ(verifyAudit(rows, std::nullopt), absl::OkStatus()) << "a chain alone cannot show it";
  EXPECT_TRUE(found(rows));
  EXPECT_TRUE(found({}));
}

TEST_F(AuditTampering, aChainWrittenAnewIsFoundAgainstTheHead) {
  std::string hash(32, '\0');
  auto rows = m_rows;
  rows[1].entry = auditEntry({.action = "nothing"}, 2, absl::UnixEpoch());
  for (auto& row : rows) row.hash = hash = chainHash(hash, row.entry);
  EXPECT_EQ(verifyAudit(rows, std::nullopt), absl::OkStatus());
  EXPECT_TRUE(found(rows));
}

TEST(AuditTrail, aFloodOfRefusalsDoesNotFillTheDisk) {
  test::TestClinic clinic;
  const std::size_t before = clinic.auditActions().size();
  for (int i = 0; i < 200; ++i) {
    EXPECT_TRUE(absl::IsUnauthenticated(clinic.hub().phones().authenticate("guess", {}).status()));
  }
  const std::size_t written = clinic.auditActions().size() - before;
  EXPECT_GT(written, 0U);
  EXPECT_LE(written, 30U);
}

}  // namespace
}  // namespace newel
