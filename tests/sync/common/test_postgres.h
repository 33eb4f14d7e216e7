// A real PostgreSQL server: a new cluster in a folder of its own, reached by a unix socket, run by somebody
// who is not root, durable as in earnest, and gone with the program that started it. Where
// NEWEL_TEST_POSTGRES names the folder of one that runs already (newel_test_postgres, below the tests of a
// whole build), that one is used.
#pragma once

#include <sys/types.h>

#include <memory>
#include <string>
#include <vector>

namespace newel::test {

class TestPostgres {
 public:
  // The program's one server, started with the first call. Ends the test with a plain message when PostgreSQL
  // is not installed: platform/linux/packages.txt has it.
  static TestPostgres& server();
  // To be called before server(): this program is going to stop it.
  static void serverOfItsOwn();
  ~TestPostgres();
  TestPostgres(const TestPostgres&) = delete;
  TestPostgres& operator=(const TestPostgres&) = delete;

  std::string newDatabase();  // its name
  void dropDatabase(const std::string& name);
  std::string address(const std::string& database) const;
  const std::string& programs() const { return m_programs; }  // the folder of psql and the others
  // As the server's own user: one of its programs, with where to connect added. True when it ends well.
  bool run(const std::string& program, std::vector<std::string> arguments) const;
  // One statement or several, in `database`. Throws for ALTER SYSTEM on a server that others use as well.
  void sql(const std::string& database, const char* statements) const;
  const std::string& folder() const { return m_folder; }
  // As a crash would: nobody is told. Throws for a server that others use as well: serverOfItsOwn() comes
  // first then.
  void stop();
  void start();

 private:
  TestPostgres();
  pid_t spawn(const std::string& program, const std::vector<std::string>& arguments) const;

  std::string m_programs;  // the folder of initdb and the others
  std::string m_folder;
  uid_t m_user = 0;
  gid_t m_group = 0;
  pid_t m_server = 0;  // 0: stopped, or not ours
  bool m_ours = true;
  int m_databases = 0;
};

}  // namespace newel::test
