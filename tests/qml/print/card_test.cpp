// The card for the wallet, read back and measured by other programs.
#include "qml/print/card.h"

#include <vector>

#include "tests/core/people/sample_people.h"
#include "tests/qml/print/sheets.h"

namespace newel::print {
namespace {

class WalletCard : public ::testing::Test {
 protected:
  QString write(const CardInput& input, const std::string& language) {
    const QString file =
        m_folder.filePath(QStringLiteral("card-") + QString::fromStdString(language) + ".pdf");
    const auto pages = writeCard(input, {QPageSize::A4, language}, file);
    EXPECT_TRUE(pages.ok()) << pages.status();
    EXPECT_EQ(pages.value_or(0), 1);
    return file;
  }
  static CardInput inputFor(const v1::Person& person) {
    CardInput input;
    input.person = person;
    input.name = QStringLiteral("Lena Fisk");
    input.clinic = clinic();
    input.thresholds.set_pain_stop_0_10(5);
    input.thresholds.set_pain_rise_0_10(2);
    return input;
  }
  SheetFolder m_folder;
};

TEST_F(WalletCard, saysWhoseLimbWhomToCallAndWhenToStop) {
  v1::Person person = test::transfemoralLeft();
  person.add_conditions(v1::CONDITION_BLOOD_THINNERS);
  person.add_conditions(v1::CONDITION_BACK_PAIN);
  const QString words = textOf(write(inputFor(person), "en"));
  for (const char* wanted : {"Lena Fisk", "left, transfemoral", "knee: yields under load", "blood thinners",
                             "112", "555 0100", "weekdays 8 to 17", "passes 5 of 10", "After a fall"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
  EXPECT_FALSE(words.contains(QStringLiteral("back pain"))) << "of no use to whoever helps in the street";
}

TEST_F(WalletCard, holdsForEverybodyInEveryLanguage) {
  for (const auto& sample : test::samplePeople()) {
    CardInput input = inputFor(sample.person);
    for (const auto one : {v1::CONDITION_BLOOD_THINNERS, v1::CONDITION_INSULIN, v1::CONDITION_SEIZURES,
                           v1::CONDITION_HEART_DISEASE})
      input.person.add_conditions(one);
    input.clinic.set_name("Department of rehabilitation, general hospital of the invented valley");
    for (const char* language : {"en", "es", "ar"}) write(input, language);
  }
}

TEST_F(WalletCard, whatDoesNotFitIsRefusedAndNotCutOff) {
  CardInput input = inputFor(test::transfemoralLeft());
  input.clinic.set_name(std::string(190, 'W'));
  input.clinic.set_hours(std::string(190, 'W'));
  input.name = QString(180, QLatin1Char('W'));
  const QString file = m_folder.filePath(QStringLiteral("never.pdf"));
  const auto pages = writeCard(input, {}, file);
  EXPECT_EQ(pages.status().code(), absl::StatusCode::kInvalidArgument);
  EXPECT_FALSE(QFile::exists(file));
}

// Another program's ruler: the frame is as wide as a bank card and as high as two (ISO/IEC 7810, ID-1: 85.60
// mm by 53.98 mm).
TEST_F(WalletCard, isTheSizeOfABankCard) {
  constexpr int kDots = 300;
  const QImage page = pageOf(write(inputFor(test::transfemoralLeft()), "en"), 1, kDots);
  const auto darkInColumn = [&page](int x) {
    int dark = 0;
    for (int y = 0; y < page.height(); ++y) dark += qGray(page.pixel(x, y)) < 128;
    return dark;
  };
  const int high = static_cast<int>(2 * 53.98 / 25.4 * kDots);
  std::vector<int> edges;
  for (int x = 0; x < page.width(); ++x) {
    if (darkInColumn(x) > high * 9 / 10) edges.push_back(x);
  }
  ASSERT_GE(edges.size(), 2U);
  EXPECT_NEAR((edges.back() - edges.front()) * 25.4 / kDots, 85.6, 0.6);
}

}  // namespace
}  // namespace newel::print
