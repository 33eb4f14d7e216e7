// Through QtKeychain to whatever the desktop has (the Secret Service on D-Bus, or KWallet). Never its plain
// fallback.
#include <qt6keychain/keychain.h>

#include <QtCore/QEventLoop>
#include <QtCore/QTimer>

#include "platform/secret_store.h"

namespace newel::platform {
namespace {

constexpr char kService[] = "newel";
// A desktop may ask the person to unlock its store first.
constexpr int kLongestMs = 60000;

// Runs the job to its end; false when the system did not answer in time.
bool finished(QKeychain::Job& job) {
  job.setAutoDelete(false);
  job.setInsecureFallback(false);
  QEventLoop loop;
  bool done = false;
  QObject::connect(&job, &QKeychain::Job::finished, &loop, [&] {
    done = true;
    loop.quit();
  });
  QTimer longest;
  longest.setSingleShot(true);
  QObject::connect(&longest, &QTimer::timeout, &loop, &QEventLoop::quit);
  longest.start(kLongestMs);
  job.start();
  if (!done) loop.exec();
  return done;
}

absl::Status statusOf(const QKeychain::Job& job) {
  switch (job.error()) {
    case QKeychain::NoError:
      return absl::OkStatus();
    case QKeychain::EntryNotFound:
      return absl::NotFoundError("secret store: no such entry");
    case QKeychain::AccessDenied:
    case QKeychain::AccessDeniedByUser:
      return absl::PermissionDeniedError("secret store: " + job.errorString().toStdString());
    default:
      return absl::UnavailableError("secret store: " + job.errorString().toStdString());
  }
}

class KeychainSecretStore : public SecretStore {
 public:
  absl::StatusOr<std::optional<std::string>> read(const std::string& name) override {
    QKeychain::ReadPasswordJob job(QString::fromLatin1(kService));
    job.setKey(QString::fromStdString(name));
    const absl::Status status = run(job);
    if (absl::IsNotFound(status)) return std::optional<std::string>();
    if (!status.ok()) return status;
    return std::optional<std::string>(job.binaryData().toStdString());
  }

  absl::Status write(const std::string& name, const std::string& value) override {
    QKeychain::WritePasswordJob job(QString::fromLatin1(kService));
    job.setKey(QString::fromStdString(name));
    job.setBinaryData(QByteArray::fromStdString(value));
    return run(job);
  }

  absl::Status erase(const std::string& name) override {
    QKeychain::DeletePasswordJob job(QString::fromLatin1(kService));
    job.setKey(QString::fromStdString(name));
    const absl::Status status = run(job);
    return absl::IsNotFound(status) ? absl::OkStatus() : status;
  }

 private:
  static absl::Status run(QKeychain::Job& job) {
    if (!finished(job)) return absl::UnavailableError("secret store: no answer");
    return statusOf(job);
  }
};

}  // namespace

std::unique_ptr<SecretStore> makeSecretStore() { return std::make_unique<KeychainSecretStore>(); }

}  // namespace newel::platform
