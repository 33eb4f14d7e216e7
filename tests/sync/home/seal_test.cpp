// What lies on the phone is sealed: against a published vector, bit by bit, through the real engine and its
// files, over a change of key, and from a store of the version before.
#include "sync/home/seal.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <absl/strings/escaping.h>
#include <gtest/gtest.h>
#include <sodium.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "sync/home/device_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

const std::string kKey(kStoreKeyBytes, 'k');
const std::string kOtherKey(kStoreKeyBytes, 'o');

class FixedRandom : public Random {
 public:
  explicit FixedRandom(std::string bytes) : m_bytes(std::move(bytes)) {}
  void fill(std::uint8_t* bytes, std::size_t size) override {
    for (std::size_t i = 0; i < size; ++i) bytes[i] = static_cast<std::uint8_t>(m_bytes[i % m_bytes.size()]);
  }

 private:
  std::string m_bytes;
};

// draft-irtf-cfrg-xchacha-03, appendix A.3.1.
TEST(Seal, givesThePublishedVector) {
  std::string key;
  for (int i = 0x80; i < 0xa0; ++i) key += static_cast<char>(i);
  std::string nonce;
  for (int i = 0x40; i < 0x58; ++i) nonce += static_cast<char>(i);
  FixedRandom random(nonce);
  const Seal seal(key, random);
  const std::string plain =
      "Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, "
      "sunscreen would be it.";
  const std::string place = absl::HexStringToBytes("50515253c0c1c2c3c4c5c6c7");
  const std::string sealed = seal.seal(plain, place);
  const std::size_t head = sealed.size() - plain.size() - 16 - nonce.size();
  EXPECT_EQ(sealed.substr(head, nonce.size()), nonce);
  EXPECT_EQ(absl::BytesToHexString(sealed.substr(head + nonce.size())),
            "bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb731c7f1b0b4aa6440bf3a82f4eda7e39"
            "ae64c6708c54c216cb96b72e1213b4522f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff9"
            "21f9664c97637da9768812f615c68b13b52ec0875924c1c7987947deafd8780acf49");
  EXPECT_EQ(*seal.open(sealed, place), plain);
}

// The two parts underneath, in the library: draft-irtf-cfrg-xchacha-03, section 2.2.1 and appendix A.3.2.
TEST(Seal, theLibrarysHChaCha20AndXChaCha20AreTheDrafts) {
  const std::string key =
      absl::HexStringToBytes("000102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f");
  const std::string nonce = absl::HexStringToBytes("000000090000004a0000000031415927");
  const auto raw = [](const std::string& s) { return reinterpret_cast<const unsigned char*>(s.data()); };
  std::string subkey(32, '\0');
  crypto_core_hchacha20(reinterpret_cast<unsigned char*>(subkey.data()), raw(nonce), raw(key), nullptr);
  EXPECT_EQ(absl::BytesToHexString(subkey),
            "82413b4227b27bfed30e42508a877d73a0f9e4d58a74a853c12ec41326d3ecdc");

  std::string stream_key;
  for (int i = 0x80; i < 0xa0; ++i) stream_key += static_cast<char>(i);
  const std::string stream_nonce = absl::HexStringToBytes("404142434445464748494a4b4c4d4e4f5051525354555658");
  const std::string plain =
      "The dhole (pronounced \"dole\") is also known as the Asiatic wild dog, red dog, and whistling dog. It "
      "is "
      "about the size of a German shepherd but looks more like a long-legged fox. This highly elusive and "
      "skilled jumper is classified with wolves, coyotes, jackals, and foxes in the taxonomic family "
      "Canidae.";
  std::string cipher(plain.size(), '\0');
  crypto_stream_xchacha20_xor_ic(reinterpret_cast<unsigned char*>(cipher.data()), raw(plain), plain.size(),
                                 raw(stream_nonce), 0, raw(stream_key));
  EXPECT_EQ(absl::BytesToHexString(cipher.substr(0, 32)),
            "4559abba4e48c16102e8bb2c05e6947f50a786de162f9b0b7e592a9b53d0d4e9");
}

TEST(Seal, everyChangedBitIsFound) {
  RealRandom random;
  const Seal seal(kKey, random);
  const std::string sealed = seal.seal("held for 5 seconds", "journal/a/1");
  for (std::size_t byte = 0; byte < sealed.size(); ++byte) {
    for (int bit = 0; bit < 8; ++bit) {
      std::string changed = sealed;
      changed[byte] = static_cast<char>(changed[byte] ^ (1 << bit));
      EXPECT_FALSE(seal.open(changed, "journal/a/1").ok()) << byte << "." << bit;
    }
  }
  for (std::size_t length = 0; length < sealed.size(); ++length)
    EXPECT_FALSE(seal.open(sealed.substr(0, length), "journal/a/1").ok()) << length;
}

TEST(Seal, belongsToItsPlaceAndItsKey) {
  RealRandom random;
  const Seal seal(kKey, random);
  const std::string sealed = seal.seal("pain 3 of 10", "practice/a/1");
  EXPECT_TRUE(absl::IsDataLoss(seal.open(sealed, "practice/b/1").status()));
  EXPECT_TRUE(absl::IsPermissionDenied(Seal(kOtherKey, random).open(sealed, "practice/a/1").status()));
  EXPECT_EQ(*Seal(kKey, random).open(sealed, "practice/a/1"), "pain 3 of 10");
  EXPECT_EQ(*seal.open(seal.seal("", "x"), "x"), "");
}

// Draft controls, CRYPTO-1/2: never the same nonce in a million.
TEST(Seal, neverUsesANonceTwice) {
  RealRandom random;
  const Seal seal(kKey, random);
  std::vector<std::string> nonces;
  constexpr int kMany = 1000000;
  nonces.reserve(kMany);
  for (int i = 0; i < kMany; ++i) nonces.push_back(seal.seal("", "").substr(9, 24));
  std::sort(nonces.begin(), nonces.end());
  EXPECT_EQ(std::adjacent_find(nonces.begin(), nonces.end()), nonces.end());
}

// Every byte of every file in the folder: the store, its log, its index.
std::string everything(const std::string& folder) {
  std::string all;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    std::ifstream file(entry.path(), std::ios::binary);
    all.append(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
  }
  return all;
}

class SealedStore : public testing::Test {
 protected:
  SealedStore() : m_person(m_clinic.addPerson(test::transfemoralLeft(), "Canarina")) {
    m_clinic.sign(test::transfemoralLeft());
  }
  test::TestClinic m_clinic;
  const std::string m_person;
};

TEST_F(SealedStore, noFileHoldsAWordOfThePerson) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(phone->writeMessage("CANARY-MESSAGE the liner pinches"), absl::OkStatus());
  const std::string id = phone->newId();
  auto line = test::sampleLine(id, m_person, 1);
  ASSERT_EQ(phone->appendJournal({line}), absl::OkStatus());
  v1::Practice practice = test::samplePractice(id, m_person);
  ASSERT_EQ(phone->closePractice(practice), absl::OkStatus());
  const std::string other = phone->newId();
  ASSERT_EQ(phone->appendJournal({test::sampleLine(other, m_person, 1)}), absl::OkStatus());
  ASSERT_TRUE(phone->programme().has_value());
  const std::string files = everything(m_clinic.folder().path("phone"));
  ASSERT_GT(files.size(), 10000U);
  const std::string exercise = phone->programme()->entries(0).exercise_id();
  for (const std::string& word : {std::string("CANARY-MESSAGE"), std::string("Canarina"), exercise,
                                  practice.app_version(), phone->programme()->signer_name()}) {
    ASSERT_FALSE(word.empty());
    EXPECT_EQ(files.find(word), std::string::npos) << word;
  }
  // The search would find them: the same words are in what the person may export.
  EXPECT_NE(phone->exportAll().find("CANARY-MESSAGE"), std::string::npos);
}

TEST_F(SealedStore, withoutAKeyNothingIsKept) {
  auto options = m_clinic.phoneOptions("bare");
  options.store_key.clear();
  EXPECT_TRUE(absl::IsFailedPrecondition(HomeEngine::open(options).status()));
  EXPECT_FALSE(fs::exists(m_clinic.folder().path("bare/home.db")));
}

TEST_F(SealedStore, anotherKeyDoesNotOpenItAndHarmsNothing) {
  m_clinic.pairedPhone("phone", m_person);
  auto options = m_clinic.phoneOptions("phone");
  options.store_key = kOtherKey;
  const auto refused = HomeEngine::open(options).status();
  EXPECT_TRUE(absl::IsPermissionDenied(refused)) << refused;
  EXPECT_FALSE(fs::exists(m_clinic.folder().path("phone/home.db.set-aside-1")));
  const auto again = HomeEngine::open(m_clinic.phoneOptions("phone"));
  ASSERT_TRUE(again.ok()) << again.status();
  EXPECT_TRUE((*again)->state().paired);
}

TEST_F(SealedStore, aNewKeyTakesOverWhole) {
  auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  ASSERT_EQ(phone->changeStoreKey(kOtherKey), absl::OkStatus());
  EXPECT_EQ(phone->practices().size(), 1U) << "it goes on without a restart";
  EXPECT_TRUE(absl::IsInvalidArgument(phone->changeStoreKey("short")));
  phone.reset();
  EXPECT_TRUE(absl::IsPermissionDenied(HomeEngine::open(m_clinic.phoneOptions("phone")).status()));
  auto options = m_clinic.phoneOptions("phone");
  options.store_key = kOtherKey;
  phone = *HomeEngine::open(options);
  EXPECT_EQ(phone->practices().size(), 1U);
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_clinic.desk().practices(m_person)->size(), 1U);
}

// A row of another practice in the place of this one: moved bytes are damage, not a record.
TEST_F(SealedStore, aMovedRecordIsNotTakenForAnother) {
  auto phone = m_clinic.pairedPhone("phone", m_person);
  for (int i = 0; i < 2; ++i)
    ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  {
    SQLite::Database raw(m_clinic.folder().path("phone/home.db"), SQLite::OPEN_READWRITE);
    raw.exec("UPDATE practice SET content = (SELECT content FROM practice ORDER BY id LIMIT 1)");
  }
  EXPECT_LT(phone->practices().size(), 2U);
}

// Stores as each version of the phone's program left them, everybody in them invented; the present one's is
// sealed with the tests' key. Up to version 2 everything lay open. NEWEL_WRITE_STORES=<folder> writes the
// last one anew.
class PastPhoneStore : public SealedStore, public testing::WithParamInterface<int> {
 protected:
  static constexpr int kLastOpen = 2;
};

TEST_P(PastPhoneStore, opensSealedAndLosesNothing) {
  auto options = m_clinic.phoneOptions("old");
  fs::create_directories(options.folder);
  fs::copy_file(
      std::string(NEWEL_SOURCE_DIR) + "/tests/data/stores/home-" + std::to_string(GetParam()) + ".db",
      options.folder + "/home.db");
  const bool was_open = everything(options.folder).find("sit-to-stand") != std::string::npos;
  ASSERT_EQ(was_open, GetParam() <= kLastOpen);
  auto phone = HomeEngine::open(options);
  ASSERT_TRUE(phone.ok()) << phone.status();
  EXPECT_TRUE((*phone)->state().paired);
  EXPECT_EQ((*phone)->practices().size(), 3U);
  EXPECT_EQ((*phone)->programmes().size(), 2U);
  EXPECT_EQ((*phone)->activeHolds().size(), 1U);
  const std::string name = (*phone)->greetingName();
  EXPECT_FALSE(name.empty());
  for (const std::string& word : {std::string("sit-to-stand"), name})
    EXPECT_EQ(everything(options.folder).find(word), std::string::npos) << word;
  phone->reset();
  if (const char* folder = std::getenv("NEWEL_WRITE_STORES"); folder != nullptr && was_open) {
    SQLite::Database(options.folder + "/home.db", SQLite::OPEN_READWRITE)
        .exec("PRAGMA journal_mode = DELETE");
    fs::copy_file(options.folder + "/home.db",
                  std::string(folder) + "/home-" + std::to_string(deviceStoreVersion()) + ".db",
                  fs::copy_options::overwrite_existing);
  }
  EXPECT_EQ((*HomeEngine::open(options))->practices().size(), 3U);
}

INSTANTIATE_TEST_SUITE_P(OfEveryVersion, PastPhoneStore, testing::Range(1, deviceStoreVersion() + 1),
                         [](const auto& version) { return "version" + std::to_string(version.param); });

}  // namespace
}  // namespace newel
