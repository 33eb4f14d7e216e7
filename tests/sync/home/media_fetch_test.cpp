// Photos and clips on their way to the phone: over TLS from a real hub, cut wherever they can be cut.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "sync/common/content_hash.h"
#include "sync/common/media_clean.h"
#include "sync/home/seal.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_media.h"
#include "tests/sync/home/full_disk.h"
#include "tests/sync/home/lossy_network.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

constexpr std::uint32_t kPart = 700;
constexpr int kRounds = 60;

class MediaOnPhone : public testing::Test {
 protected:
  HomeEngine::Options options(const std::string& name) {
    HomeEngine::Options options = m_clinic.phoneOptions(name);
    options.network = &m_network;
    options.media_part_bytes = kPart;
    return options;
  }
  void pair(const std::string& name) {
    auto phone = HomeEngine::open(options(name));
    ASSERT_TRUE(phone.ok()) << phone.status();
    m_phone = *std::move(phone);
    ASSERT_EQ(m_phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  }
  void openAgain(const std::string& name) {
    m_phone.reset();
    m_phone = *HomeEngine::open(options(name));
  }
  // A programme with `photo` and, when it is not empty, `clip`.
  void sign(const std::string& photo, const std::string& clip, std::uint32_t base = 0) {
    v1::SignProgrammeRequest request;
    *request.mutable_draft() = m_clinic.draft(test::transfemoralLeft());
    request.set_base_number(base);
    if (!photo.empty()) {
      ASSERT_EQ(m_clinic.desk().putMedia(m_person, photo), absl::OkStatus());
      *request.mutable_draft()->mutable_entries(0)->mutable_photo() = test::refTo(photo, "A photo");
    }
    if (!clip.empty()) {
      ASSERT_EQ(m_clinic.desk().putMedia(m_person, clip), absl::OkStatus());
      *request.mutable_draft()->mutable_entries(0)->mutable_clip() = test::refTo(clip, "A clip");
    }
    const auto reply = m_clinic.desk().signProgramme(request);
    ASSERT_TRUE(reply.ok()) << reply.status();
  }
  bool has(const std::string& content) const {
    const auto kept = m_phone->media(test::refTo(content, ""));
    return kept.has_value() && *kept == content;
  }
  // A nudge may end a round between two parts; the next goes on. The worst status of them.
  absl::Status sync(const std::string& until) {
    absl::Status last;
    for (int i = 0; i < kRounds; ++i) {
      last = m_phone->syncOnce();
      if (!last.ok() || has(until)) return last;
    }
    return last;
  }

  test::TestClinic m_clinic;
  test::LossyNetwork m_network;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft(), "Tilda");
  std::string m_photo = test::photoOfColour(3, 5000);
  std::string m_clip = cleanMedia(test::mediaFile("tagged.mp4"))->content;
  std::unique_ptr<HomeEngine> m_phone;
};

TEST_F(MediaOnPhone, comesWithTheProgrammeAndStaysWithNoNetwork) {
  sign(m_photo, m_clip);
  pair("phone");
  EXPECT_EQ(sync(m_clip), absl::OkStatus());
  EXPECT_TRUE(has(m_photo));
  EXPECT_TRUE(m_phone->hasMedia(test::refTo(m_clip, "")));
  m_network.losses.down = true;
  openAgain("phone");
  EXPECT_TRUE(has(m_photo)) << "offline, after a start";
  EXPECT_TRUE(has(m_clip));
}

TEST_F(MediaOnPhone, comesWithAMessageAndIsNobodyElses) {
  sign(m_photo, "");
  pair("phone");
  v1::SendMessageRequest request;
  request.set_person_id(m_person);
  request.set_id(test::idOf(900));
  request.set_text("This is how the strap should lie.");
  *request.mutable_clip() = test::refTo(m_clip, "A strap is closed");
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.desk().sendMessage(request).status()))
      << "the hub does not have it";
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_clip), absl::OkStatus());
  ASSERT_TRUE(m_clinic.desk().sendMessage(request).ok());
  ASSERT_TRUE(m_clinic.desk().sendMessage(request).ok()) << "sent again, it is the same";
  v1::SendMessageRequest other = request;
  *other.mutable_clip() = test::refTo(m_photo, "");
  EXPECT_FALSE(m_clinic.desk().sendMessage(other).ok());
  const std::string somebody = m_clinic.addPerson(test::transtibialRight(), "Una");
  request.set_person_id(somebody);
  request.set_id(test::idOf(901));
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.desk().sendMessage(request).status()))
      << "a hash gives nobody another person's content";
  EXPECT_EQ(sync(m_clip), absl::OkStatus());
  EXPECT_TRUE(has(m_clip));
  EXPECT_TRUE(has(m_photo)) << "the programme's stays";
  ASSERT_EQ(m_phone->messages().size(), 1U);
  EXPECT_EQ(m_phone->messages().front().clip().words(), "A strap is closed");
  // Twenty newer messages: it is not shown any more, and does not stay.
  for (int i = 0; i < 20; ++i) {
    v1::SendMessageRequest more;
    more.set_person_id(m_person);
    more.set_id(test::idOf(910 + i));
    more.set_text("See you on Monday.");
    ASSERT_TRUE(m_clinic.desk().sendMessage(more).ok());
  }
  for (int i = 0; i < kRounds && has(m_clip); ++i) ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_FALSE(has(m_clip));
  EXPECT_TRUE(has(m_photo));
}

TEST_F(MediaOnPhone, aCutAtEachPartLosesOnlyThatPart) {
  sign(m_photo, "");
  const int parts = static_cast<int>((m_photo.size() + kPart - 1) / kPart);
  for (int cut = 0; cut <= parts; ++cut) {
    const std::string name = "phone" + std::to_string(cut);
    m_network.losses.media_until_down = -1;
    m_network.losses.down = false;
    pair(name);
    m_network.losses.media_until_down = cut;
    m_network.losses.media_parts = 0;
    const absl::Status first = sync(m_photo);
    EXPECT_EQ(first.ok(), cut == parts) << cut << first;
    EXPECT_EQ(has(m_photo), cut == parts) << cut;
    EXPECT_TRUE(m_phone->programme().has_value()) << "the programme came before, and may be practised";
    m_network.losses.down = false;
    m_network.losses.media_until_down = -1;
    m_network.losses.media_parts = 0;
    if (cut % 2 == 0) openAgain(name);  // killed there, or only cut off
    EXPECT_EQ(sync(m_photo), absl::OkStatus()) << cut;
    EXPECT_TRUE(has(m_photo)) << cut;
    EXPECT_EQ(m_network.losses.media_parts, parts - cut) << "nothing that was here was fetched again";
  }
}

TEST_F(MediaOnPhone, aLostReplyDoublesNothing) {
  sign(m_photo, "");
  pair("phone");
  m_network.losses.lose_media_replies = 3;
  for (int i = 0; i < 4 && !has(m_photo); ++i) sync(m_photo).IgnoreError();
  EXPECT_EQ(sync(m_photo), absl::OkStatus());
  EXPECT_TRUE(has(m_photo));
}

TEST_F(MediaOnPhone, whatIsNotItIsNeverShownAndIsNoReasonToBeTold) {
  sign(m_photo, "");
  pair("phone");
  m_network.losses.spoil_media = [](v1::MediaPart& part) { (*part.mutable_content())[0] ^= 1; };
  for (int i = 0; i < 40; ++i) {
    EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
    EXPECT_FALSE(m_phone->media(test::refTo(m_photo, "")).has_value());
    EXPECT_FALSE(m_phone->hasMedia(test::refTo(m_photo, "")));
  }
  EXPECT_EQ(m_phone->state().last_problem, "");
  EXPECT_LE(m_network.losses.media_parts, 3 * static_cast<int>(m_photo.size() / kPart + 1))
      << "and not for ever";
}

TEST_F(MediaOnPhone, whatDoesNotFitIsNotKept) {
  const auto spoil = std::vector<std::function<void(v1::MediaPart&)>>{
      [](v1::MediaPart& part) { part.set_offset(part.offset() + 1); },
      [](v1::MediaPart& part) { part.set_size_bytes(part.size_bytes() + 1); },
      [](v1::MediaPart& part) { part.clear_content(); },
      [this](v1::MediaPart& part) { part.set_content(std::string(m_photo.size() + 1, 'x')); }};
  sign(m_photo, "");
  for (std::size_t i = 0; i < spoil.size(); ++i) {
    m_network.losses.spoil_media = nullptr;
    pair("phone" + std::to_string(i));
    m_network.losses.spoil_media = spoil[i];
    for (int round = 0; round < 2; ++round) EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
    EXPECT_FALSE(has(m_photo));
    m_network.losses.spoil_media = nullptr;
    EXPECT_EQ(sync(m_photo), absl::OkStatus());
    EXPECT_TRUE(has(m_photo)) << i;
    m_phone.reset();
  }
}

TEST_F(MediaOnPhone, whatTheNewestTwoProgrammesDoNotNameGoes) {
  const std::string second = test::photoOfColour(4, 3000);
  sign(m_photo, m_clip);
  pair("phone");
  ASSERT_EQ(sync(m_clip), absl::OkStatus());
  sign(second, "", 1);
  ASSERT_EQ(sync(second), absl::OkStatus());
  EXPECT_TRUE(has(m_photo)) << "a practice under way keeps the number it began with";
  sign(second, "", 2);
  for (int i = 0; i < 3; ++i) ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_FALSE(m_phone->hasMedia(test::refTo(m_photo, "")));
  EXPECT_FALSE(has(m_clip));
  EXPECT_TRUE(has(second));
}

TEST_F(MediaOnPhone, liesSealedAndGoesWithThePerson) {
  const auto onDisk = [this](const std::string& bytes) {
    for (const auto& entry : fs::recursive_directory_iterator(m_clinic.phoneOptions("phone").folder)) {
      std::ifstream file(entry.path(), std::ios::binary);
      const std::string content{std::istreambuf_iterator<char>(file), {}};
      if (content.find(bytes) != std::string::npos) return true;
    }
    return false;
  };
  sign(m_photo, m_clip);
  pair("phone");
  ASSERT_EQ(sync(m_clip), absl::OkStatus());
  const std::string some = m_photo.substr(m_photo.size() / 2, 40);
  EXPECT_FALSE(onDisk(some));
  EXPECT_FALSE(onDisk(m_clip.substr(5000, 40)));
  EXPECT_FALSE(onDisk("IHDR"));
  EXPECT_EQ(m_phone->wipe(), absl::OkStatus());
  EXPECT_FALSE(fs::exists(m_clinic.phoneOptions("phone").folder + "/media.db"));
  EXPECT_FALSE(has(m_photo));
}

TEST_F(MediaOnPhone, anotherKeyOpensThem) {
  sign(m_photo, "");
  pair("phone");
  ASSERT_EQ(sync(m_photo), absl::OkStatus());
  EXPECT_EQ(m_phone->changeStoreKey(std::string(kStoreKeyBytes, 'n')), absl::OkStatus());
  EXPECT_TRUE(has(m_photo));
  m_phone.reset();
  auto other = options("phone");
  other.store_key = std::string(kStoreKeyBytes, 'n');
  m_phone = *HomeEngine::open(other);
  EXPECT_TRUE(has(m_photo));
}

TEST_F(MediaOnPhone, damageCostsNothingButFetchingAgain) {
  sign(m_photo, "");
  pair("phone");
  ASSERT_EQ(sync(m_photo), absl::OkStatus());
  m_phone.reset();
  const std::string path = m_clinic.phoneOptions("phone").folder + "/media.db";
  for (const bool all : {false, true}) {
    // Every page but the first, so that it still opens; then the first as well.
    const std::size_t from = all ? 0 : 4096;
    const std::size_t size = fs::file_size(path);
    ASSERT_GT(size, 4096U);
    {
      std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
      file.seekp(static_cast<std::streamoff>(from));
      file << std::string(size - from, '\x5A');
    }
    m_phone = *HomeEngine::open(options("phone"));
    EXPECT_TRUE(m_phone->programme().has_value()) << "the store itself is whole";
    EXPECT_FALSE(m_phone->media(test::refTo(m_photo, "")).has_value());
    for (int i = 0; i < 4; ++i) sync(m_photo).IgnoreError();
    EXPECT_TRUE(has(m_photo));
    EXPECT_EQ(m_phone->state().last_problem, "");
    m_phone.reset();
  }
}

TEST_F(MediaOnPhone, aFullDiskIsSaidAndThePracticeGoesOn) {
  sign(m_photo, "");
  auto full = options("phone");
  full.sqlite_vfs = test::fullDiskVfs();
  fs::create_directories(full.folder);
  m_phone = *HomeEngine::open(full);
  ASSERT_EQ(m_phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  // The programme comes; then the disk fills up in the middle of the photo.
  m_network.losses.media_until_down = 2;
  sync(m_photo).IgnoreError();
  ASSERT_TRUE(m_phone->programme().has_value());
  m_network.losses.media_until_down = -1;
  m_network.losses.down = false;
  m_network.losses.spoil_media = [](v1::MediaPart&) { test::setDiskFull(true); };
  EXPECT_FALSE(sync(m_photo).ok());
  EXPECT_EQ(m_phone->state().last_problem, "sync.disk-full");
  EXPECT_FALSE(has(m_photo));
  EXPECT_TRUE(m_phone->programme().has_value());
  test::setDiskFull(false);
  m_network.losses.spoil_media = nullptr;
  EXPECT_EQ(sync(m_photo), absl::OkStatus());
  EXPECT_TRUE(has(m_photo));
}

TEST_F(MediaOnPhone, aHubThatHasLostItIsNoReasonToBeTold) {
  sign(m_photo, m_clip);
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    transaction.dropStaleMedia(m_clinic.clock().wall(), m_clinic.clock().wall());
    return absl::OkStatus();
  }),
            absl::OkStatus());
  pair("phone");
  EXPECT_EQ(sync(m_clip), absl::OkStatus()) << "signed: it stays";
  // A phone's programme of before the hub went back to a backup names what is not there.
  m_network.losses.spoil_fetch = nullptr;
  EXPECT_EQ(m_phone->state().last_problem, "");
  v1::FetchMediaRequest request;
  request.set_sha256(sha256("lost"));
  request.set_most_bytes(10);
  EXPECT_TRUE(absl::IsNotFound(m_clinic.hub().media().fetch({"device", m_person}, request).status()));
}

}  // namespace
}  // namespace newel
