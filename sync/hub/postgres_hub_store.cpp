#include "sync/hub/postgres_hub_store.h"

#include <condition_variable>
#include <mutex>
#include <utility>
#include <vector>

#include "sync/common/real_random.h"
#include "sync/common/text_codes.h"
#include "sync/hub/group_commit.h"
#include "sync/hub/postgres_hub_schema.h"
#include "sync/hub/postgres_hub_transaction.h"
#include "sync/hub/postgres_listener.h"
#include "sync/hub/postgres_writer.h"

namespace newel {
namespace {

// With the writer and the listener six connections for each process, of the hundred that PostgreSQL has by
// itself. Ours, no source.
constexpr int kReaders = 4;
constexpr std::size_t kNameBytes = 8;

class PostgresHubStore : public HubStore {
 public:
  PostgresHubStore(std::string address, std::string name, std::unique_ptr<PgSession> writer,
                   std::vector<std::unique_ptr<PgSession>> readers)
      : m_address(std::move(address)),
        m_name(name),
        m_writer(std::move(writer), std::move(name)),
        m_group(&m_writer),
        m_readers(std::move(readers)) {}

  absl::Status write(const std::function<absl::Status(HubTransaction&)>& body) override {
    return m_group.write(body);
  }

  absl::Status writeFirst(const std::function<absl::Status(HubTransaction&)>& body) override {
    return m_group.writeFirst(body);
  }

  std::size_t writersWaiting() override { return m_group.waiting(); }

  absl::Status read(const std::function<absl::Status(HubTransaction&)>& body) override {
    const Lent lent(*this);
    bool untouched = false;
    absl::Status status = readOnce(*lent.session, body, untouched);
    // A connection that died while nobody used it shows itself with the first question: nothing was told to
    // the body.
    return untouched ? readOnce(*lent.session, body, untouched) : status;
  }

  bool copiedByDatabase() const override { return true; }
  absl::Status watch(const std::function<void(const StoreNews&)>& heard) override {
    const std::lock_guard lock(m_watch_mutex);
    m_listener.reset();
    if (!heard) return absl::OkStatus();
    auto session = PgSession::open(m_address);
    if (!session.ok()) return session.status();
    m_listener = std::make_unique<PostgresListener>(*std::move(session), m_name, heard);
    return absl::OkStatus();
  }

 private:
  // A reader, for as long as this lives.
  struct Lent {
    explicit Lent(PostgresHubStore& of) : store(of), session(of.takeReader()) {}
    ~Lent() { store.giveBack(std::move(session)); }
    Lent(const Lent&) = delete;
    Lent& operator=(const Lent&) = delete;
    PostgresHubStore& store;
    std::unique_ptr<PgSession> session;
  };

  // `untouched`: it failed, and the body had no answer to anything yet.
  static absl::Status readOnce(PgSession& session, const std::function<absl::Status(HubTransaction&)>& body,
                               bool& untouched) {
    untouched = false;
    std::uint64_t before = 0;
    try {
      beginView(session);
      before = session.answered();
      PostgresHubTransaction tables(session);
      absl::Status status = body(tables);
      session.rollBackUnheard();
      return status;
    } catch (const PgError& error) {
      untouched = !session.isOpen() && before != 0 && session.answered() == before;
      session.rollBackUnheard();
      return statusOf(error);
    } catch (...) {
      session.rollBackUnheard();
      throw;
    }
  }
  // With the first question. A connection that died while nobody used it is made anew here.
  static void beginView(PgSession& session) {
    session.ensure();
    session.later("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
  }

  std::unique_ptr<PgSession> takeReader() {
    std::unique_lock lock(m_read_mutex);
    m_reader_free.wait(lock, [this] { return !m_readers.empty(); });
    auto reader = std::move(m_readers.back());
    m_readers.pop_back();
    return reader;
  }
  void giveBack(std::unique_ptr<PgSession> reader) {
    {
      const std::lock_guard lock(m_read_mutex);
      m_readers.push_back(std::move(reader));
    }
    m_reader_free.notify_one();
  }

  const std::string m_address;
  const std::string m_name;
  PostgresWriter m_writer;
  GroupCommit m_group;
  std::mutex m_read_mutex;
  std::condition_variable m_reader_free;
  std::vector<std::unique_ptr<PgSession>> m_readers;
  std::mutex m_watch_mutex;
  std::unique_ptr<PostgresListener> m_listener;
};

}  // namespace

absl::StatusOr<std::unique_ptr<HubStore>> openPostgresHubStore(const std::string& address) {
  auto writer = PgSession::open(address);
  if (!writer.ok()) return writer.status();
  const absl::Status migrated = migrate(**writer, postgresHubMigrations());
  if (!migrated.ok()) return migrated;
  std::vector<std::unique_ptr<PgSession>> readers;
  for (int i = 0; i < kReaders; ++i) {
    auto reader = PgSession::open(address);
    if (!reader.ok()) return reader.status();
    readers.push_back(*std::move(reader));
  }
  RealRandom random;
  const std::string name = toHex(randomBytes(random, kNameBytes));
  return std::unique_ptr<HubStore>(
      std::make_unique<PostgresHubStore>(address, name, *std::move(writer), std::move(readers)));
}

}  // namespace newel
