// Photos and clips at the hub, over TLS, on either store.
#include "sync/hub/media_shelf.h"

#include <gtest/gtest.h>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/common/media_clean.h"
#include "sync/hub/erasure.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_media.h"

namespace newel {
namespace {

class Media : public testing::Test {
 protected:
  v1::PutMediaRequest part(const std::string& person, std::size_t from, std::size_t to) const {
    v1::PutMediaRequest request = mediaPartOf(person, m_photo, sha256(m_photo), from);
    request.set_content(m_photo.substr(from, to - from));
    return request;
  }
  absl::StatusOr<v1::SignProgrammeReply> signWith(const std::string& person_id, const v1::MediaRef& photo,
                                                  std::uint32_t base = 0) {
    v1::Person person = person_id == m_person ? test::transfemoralLeft() : test::transtibialRight();
    v1::SignProgrammeRequest request;
    *request.mutable_draft() = m_clinic.draft(person);
    *request.mutable_draft()->mutable_entries(0)->mutable_photo() = photo;
    request.set_base_number(base);
    return m_clinic.desk().signProgramme(request);
  }
  absl::StatusOr<v1::MediaPart> fetchFor(const std::string& person_id, std::uint64_t offset = 0) {
    v1::FetchMediaRequest request;
    request.set_sha256(sha256(m_photo));
    request.set_offset(offset);
    request.set_most_bytes(1000);
    return m_clinic.hub().media().fetch({"device", person_id}, request);
  }
  // Rows of every table whose name begins with "media".
  std::size_t bytesOfMedia() {
    std::size_t bytes = 0;
    for (const auto& [table, content] : m_clinic.place().dump()) {
      if (table.rfind("media", 0) == 0) bytes += content.size();
    }
    return bytes;
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft(), "Tilda");
  std::string m_other = m_clinic.addPerson(test::transtibialRight(), "Bo");
  std::string m_photo = test::photoOfColour(3, 5000);
  v1::MediaRef m_ref = test::refTo(m_photo, "Hand on the rail, foot on the first step");
};

TEST_F(Media, goesUpInPartsAndOnFromWhereItWasCut) {
  auto reply = m_clinic.desk().putMediaPart(part(m_person, 0, 1000));
  ASSERT_TRUE(reply.ok()) << reply.status();
  EXPECT_EQ(reply->offset(), 1000U);
  EXPECT_FALSE(reply->whole());
  // The reply was lost: the same again changes nothing, and says where to go on.
  EXPECT_EQ(m_clinic.desk().putMediaPart(part(m_person, 0, 1000))->offset(), 1000U);
  EXPECT_EQ(m_clinic.desk().putMediaPart(part(m_person, 3000, 4000))->offset(), 1000U) << "a gap is not kept";
  EXPECT_EQ(m_clinic.desk().putMediaPart(part(m_person, 0, 0))->offset(), 1000U) << "only asked";
  m_clinic.stopHub();
  m_clinic.startHub();
  const auto desk = m_clinic.newDesk();
  ASSERT_TRUE(desk->signIn(test::kUser, test::kPassword).ok());
  EXPECT_EQ(desk->putMediaPart(part(m_person, 0, 0))->offset(), 1000U) << "the hub was started anew";
  EXPECT_EQ(desk->putMedia(m_person, m_photo), absl::OkStatus());
  EXPECT_TRUE(desk->putMediaPart(part(m_person, 0, 0))->whole());
  EXPECT_EQ(desk->media(m_person, m_ref).value_or(""), m_photo);
}

TEST_F(Media, largerThanOnePartComesBackAsItWas) {
  const std::string large = test::photoOfColour(9, kMostMediaPartBytes * 3);
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, large), absl::OkStatus());
  EXPECT_EQ(m_clinic.desk().media(m_person, test::refTo(large, "x")).value_or(""), large);
}

TEST_F(Media, countsOnlyOnceItsHashAndItsFormAreRight) {
  v1::PutMediaRequest wrong = part(m_person, 0, m_photo.size());
  (*wrong.mutable_content())[m_photo.size() - 20] ^= 1;
  const auto reply = m_clinic.desk().putMediaPart(wrong);
  EXPECT_TRUE(absl::IsInvalidArgument(reply.status())) << reply.status();
  EXPECT_EQ(m_clinic.desk().putMediaPart(part(m_person, 0, 0))->offset(), 0U) << "nothing of it stays";
  EXPECT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  // Of the right hash, and with a place in it.
  const absl::Status tells = m_clinic.desk().putMedia(m_person, test::mediaFile("tagged.jpg"));
  EXPECT_TRUE(absl::IsInvalidArgument(tells));
  EXPECT_NE(tells.message().find("where it was taken"), std::string::npos) << tells;
  EXPECT_FALSE(m_clinic.desk().putMedia(m_person, "something else").ok());
  const auto clip = cleanMedia(test::mediaFile("tagged.mp4"));
  EXPECT_EQ(m_clinic.desk().putMedia(m_person, clip->content), absl::OkStatus());
}

TEST_F(Media, isBoundedWithAWordForEachBound) {
  v1::PutMediaRequest request = part(m_person, 0, 1000);
  request.set_sha256("short");
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putMediaPart(request).status()));
  request = part(m_person, 0, 1000);
  request.set_size_bytes((std::uint64_t{16} << 20U) + 1);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putMediaPart(request).status()));
  request = part(m_person, 0, 1000);
  request.set_size_bytes(999);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putMediaPart(request).status()));
  request = part(m_person, 0, 1000);
  request.set_content(std::string(kMostMediaPartBytes + 1, 'x'));
  request.set_size_bytes(1U << 20U);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putMediaPart(request).status()));
  ASSERT_TRUE(m_clinic.desk().putMediaPart(part(m_person, 0, 1000)).ok());
  request = part(m_person, 1000, 2000);
  request.set_size_bytes(m_photo.size() + 1);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putMediaPart(request).status())) << "another size";
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().putMediaPart(part(test::idOf(77), 0, 10)).status()));
}

TEST_F(Media, unfinishedUploadsAreFewAndGoAfterADay) {
  const auto begin = [&](std::uint32_t colour) {
    const std::string photo = test::photoOfColour(colour);
    v1::PutMediaRequest request = mediaPartOf(m_person, photo, sha256(photo), 0);
    request.set_content(photo.substr(0, 10));
    return m_clinic.desk().putMediaPart(request).status();
  };
  for (std::uint32_t i = 0; i < kMostMediaUploads; ++i) EXPECT_EQ(begin(100 + i), absl::OkStatus());
  EXPECT_TRUE(absl::IsResourceExhausted(begin(200)));
  m_clinic.clock().advance(kMediaUploadKept + absl::Seconds(1));
  ASSERT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword).ok()) << "the session is over";
  EXPECT_EQ(begin(200), absl::OkStatus());
}

TEST_F(Media, whatNobodySignedGoesAfterAMonthAndWhatIsSignedStays) {
  const std::string unsigned_photo = test::photoOfColour(40);
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, unsigned_photo), absl::OkStatus());
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  ASSERT_TRUE(signWith(m_person, m_ref).ok());
  m_clinic.clock().advance(kMediaUnsignedKept + absl::Seconds(1));
  ASSERT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword).ok());
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, test::photoOfColour(41)), absl::OkStatus());
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().media(m_person, test::refTo(unsigned_photo, "x")).status()));
  EXPECT_EQ(m_clinic.desk().media(m_person, m_ref).value_or(""), m_photo);
}

TEST_F(Media, aPhoneHasOnlyWhatASignedProgrammeOfItsPersonNames) {
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  EXPECT_TRUE(absl::IsNotFound(fetchFor(m_person).status())) << "not signed yet";
  ASSERT_TRUE(signWith(m_person, m_ref).ok());
  const auto first = fetchFor(m_person);
  ASSERT_TRUE(first.ok()) << first.status();
  EXPECT_EQ(first->content(), m_photo.substr(0, 1000));
  EXPECT_EQ(first->size_bytes(), m_photo.size());
  EXPECT_EQ(fetchFor(m_person, 4500)->content(), m_photo.substr(4500, 1000)) << "from anywhere";
  EXPECT_EQ(fetchFor(m_person, m_photo.size() + 5)->content(), "");
  EXPECT_TRUE(absl::IsNotFound(fetchFor(m_other).status())) << "somebody else's";
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().media(m_other, m_ref).status()));
}

TEST_F(Media, toKnowTheHashIsNotToHaveTheContent) {
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  EXPECT_FALSE(m_clinic.desk().putMediaPart(part(m_other, 0, 0))->whole());
  EXPECT_EQ(m_clinic.desk().putMediaPart(part(m_other, 0, 0))->offset(), 0U);
  EXPECT_TRUE(absl::IsFailedPrecondition(signWith(m_other, m_ref).status()));
}

TEST_F(Media, liesThereOnceForAllWhoUseIt) {
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  const std::size_t one = bytesOfMedia();
  ASSERT_EQ(m_clinic.desk().putMedia(m_other, m_photo), absl::OkStatus());
  EXPECT_LT(bytesOfMedia(), one + m_photo.size() / 2);
  EXPECT_EQ(m_clinic.desk().media(m_other, m_ref).value_or(""), m_photo);
}

TEST_F(Media, aProgrammeNamesOnlyWhatIsThereAsItIs) {
  const auto refused = signWith(m_person, m_ref);
  EXPECT_TRUE(absl::IsFailedPrecondition(refused.status())) << refused.status();
  EXPECT_NE(refused.status().message().find("entries[0].photo"), std::string::npos);
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  v1::MediaRef wrong = m_ref;
  wrong.set_size_bytes(m_ref.size_bytes() - 1);
  EXPECT_TRUE(absl::IsFailedPrecondition(signWith(m_person, wrong).status()));
  wrong = m_ref;
  wrong.set_type(v1::MEDIA_TYPE_JPEG);
  EXPECT_TRUE(absl::IsFailedPrecondition(signWith(m_person, wrong).status()));
  wrong = m_ref;
  wrong.clear_words();
  EXPECT_TRUE(absl::IsInvalidArgument(signWith(m_person, wrong).status())) << "words are needed";
  const auto good = signWith(m_person, m_ref);
  ASSERT_TRUE(good.ok()) << good.status();
  EXPECT_EQ(good->programme().entries(0).photo().words(), m_ref.words());
}

TEST_F(Media, anErasedPersonsGoUnlessSomebodyElseHasThem) {
  const std::string own = test::photoOfColour(50, 3000);
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  ASSERT_EQ(m_clinic.desk().putMedia(m_other, m_photo), absl::OkStatus());
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, own), absl::OkStatus());
  ASSERT_TRUE(signWith(m_person, m_ref).ok());
  const std::string begun = test::photoOfColour(51, 3000);
  v1::PutMediaRequest half = mediaPartOf(m_person, begun, sha256(begun), 0);
  half.set_content(begun.substr(0, 100));
  ASSERT_TRUE(m_clinic.desk().putMediaPart(half).ok());
  ASSERT_EQ(erasePerson(m_clinic.hub().context(), m_person, "wish"), absl::OkStatus());
  EXPECT_TRUE(absl::IsNotFound(fetchFor(m_person).status()));
  EXPECT_EQ(m_clinic.desk().media(m_other, m_ref).value_or(""), m_photo);
  ASSERT_EQ(erasePerson(m_clinic.hub().context(), m_other, "term"), absl::OkStatus());
  EXPECT_EQ(bytesOfMedia(), 0U);
}

TEST_F(Media, theTrailNamesAnIdAndNoContent) {
  ASSERT_EQ(m_clinic.desk().putMedia(m_person, m_photo), absl::OkStatus());
  ASSERT_TRUE(signWith(m_person, m_ref).ok());
  ASSERT_TRUE(m_clinic.desk().media(m_person, m_ref).ok());
  std::string all;
  for (const auto& line : m_clinic.auditActions()) all += line + "\n";
  EXPECT_NE(all.find("media.add"), std::string::npos);
  EXPECT_NE(all.find("media.see"), std::string::npos);
  EXPECT_EQ(all.find("rail"), std::string::npos) << "words of a photo";
}

}  // namespace
}  // namespace newel
