#include "sync/common/certificate.h"

#include <gtest/gtest.h>

#include "sync/common/pinned_channel.h"
#include "sync/protocol/home_service.grpc.pb.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

TEST(Certificate, eachIsAnother) {
  const auto one = makeCertificate({"hub.clinic.example", "192.0.2.7"});
  const auto two = makeCertificate({});
  ASSERT_TRUE(one.ok()) << one.status();
  ASSERT_TRUE(two.ok()) << two.status();
  EXPECT_EQ(fingerprintOf(one->certificate_pem)->size(), 32U);
  EXPECT_NE(*fingerprintOf(one->certificate_pem), *fingerprintOf(two->certificate_pem));
  EXPECT_FALSE(fingerprintOf("no certificate").ok());
}

TEST(Certificate, thePinnedHubIsReachedAndNoOther) {
  test::TestClinic clinic;
  test::TestClinic other;
  const std::string pin = clinic.hub().clinic().certificate_sha256;
  const auto right = connectPinned(clinic.address(), {pin}, absl::Seconds(5));
  ASSERT_TRUE(right.ok()) << right.status();
  EXPECT_EQ(right->certificate_sha256, pin);
  const auto wrong = connectPinned(other.address(), {pin}, absl::Seconds(5));
  EXPECT_TRUE(absl::IsUnauthenticated(wrong.status())) << wrong.status();
  EXPECT_TRUE(isCertificateProblem(wrong.status()));
}

// A connection made from a kept certificate, to a hub that shows another: the call fails as that, and not as
// if there were no network.
TEST(Certificate, anotherHubAtAKnownAddressIsToldApart) {
  test::TestClinic clinic;
  test::TestClinic other;
  const auto stub =
      v1::HomeService::NewStub(channelTo(other.address(), clinic.hub().clinic().certificate.certificate_pem));
  grpc::ClientContext context;
  setDeadline(context, absl::Seconds(5));
  v1::FetchReply reply;
  const absl::Status status = fromCall(stub->Fetch(&context, v1::FetchRequest(), &reply));
  EXPECT_TRUE(isCertificateProblem(status)) << status;
}

TEST(Certificate, nobodyThereIsUnavailable) {
  const auto nobody = connectPinned("127.0.0.1:1", {std::string(32, 'x')}, absl::Seconds(2));
  EXPECT_TRUE(absl::IsUnavailable(nobody.status())) << nobody.status();
  EXPECT_FALSE(isCertificateProblem(nobody.status()));
}

}  // namespace
}  // namespace newel
