#include "spotblue/base/whole_file.hpp"

#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <string>

#include "spotblue/base/error.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "support/thrown.hpp"

namespace spotblue::whole_file_test {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

class WholeFile : public ::testing::Test {
 protected:
  WholeFile()
      : folder_(fs::temp_directory_path() / ("spotblue-whole-" + std::to_string(getpid()))) {
    fs::create_directories(folder_);
  }
  ~WholeFile() override { fs::remove_all(folder_); }

  [[nodiscard]] fs::path in_folder(const char* name) const { return folder_ / name; }
  [[nodiscard]] static std::string bytes_of(const fs::path& file) {
    return read_bytes(file, 1.0, "a file");
  }
  [[nodiscard]] std::size_t files() const {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }

 private:
  fs::path folder_;
};

TEST_F(WholeFile, IsThereWithAllItsBytes) {
  write_whole(in_folder("a"), std::string("one\0two", 7));
  EXPECT_EQ(bytes_of(in_folder("a")), std::string("one\0two", 7));
  EXPECT_EQ(files(), 1U);
}

TEST_F(WholeFile, ADraftThatIsFoundBadTakesNoPlace) {
  write_whole(in_folder("a"), "old");
  EXPECT_THROW(write_whole(in_folder("a"), "new",
                           [](const fs::path& draft) {
                             EXPECT_EQ(bytes_of(draft), "new");
                             throw Error(ErrorCode::unreadable, {}, "is bad", "");
                           }),
               Error);
  EXPECT_EQ(bytes_of(in_folder("a")), "old");
  EXPECT_EQ(files(), 1U);
  write_whole(in_folder("a"), "new", [](const fs::path&) {});
  EXPECT_EQ(bytes_of(in_folder("a")), "new");
}

TEST_F(WholeFile, AnInputIsSeenThroughEveryLink) {
  write_whole(in_folder("input"), "in");
  fs::create_symlink(in_folder("input"), in_folder("soft"));
  fs::create_hard_link(in_folder("input"), in_folder("hard"));
  write_whole(in_folder("other"), "in");
  for (const char* name : {"input", "soft", "hard"}) {
    EXPECT_THROW(refuse_overwriting(in_folder(name), {in_folder("other"), in_folder("input")}),
                 Error)
        << name;
  }
  EXPECT_NO_THROW(refuse_overwriting(in_folder("other"), {in_folder("input")}));
  EXPECT_NO_THROW(refuse_overwriting(in_folder("new"), {in_folder("input"), in_folder("new")}));
  EXPECT_NO_THROW(refuse_overwriting("", {in_folder("input")}));
}

TEST_F(WholeFile, KeepsTheModeOfTheOneItReplaces) {
  write_whole(in_folder("a"), "old");
  fs::permissions(in_folder("a"), fs::perms::owner_read | fs::perms::owner_write);
  write_whole(in_folder("a"), "new");
  EXPECT_EQ(fs::status(in_folder("a")).permissions(),
            fs::perms::owner_read | fs::perms::owner_write);
  EXPECT_EQ(bytes_of(in_folder("a")), "new");
}

TEST_F(WholeFile, ReplacesWhatALinkLeadsToAndNotTheLink) {
  write_whole(in_folder("a"), "old");
  fs::create_symlink(in_folder("a"), in_folder("link"));
  write_whole(in_folder("link"), "new");
  EXPECT_TRUE(fs::is_symlink(in_folder("link")));
  EXPECT_EQ(bytes_of(in_folder("a")), "new");
}

TEST_F(WholeFile, IsNotWrittenInPlaceOfALinkThatLeadsNowhere) {
  fs::create_symlink(in_folder("gone"), in_folder("dangling"));
  fs::create_symlink(in_folder("loop"), in_folder("loop"));
  for (const char* name : {"dangling", "loop"}) {
    EXPECT_THROW(write_whole(in_folder(name), "new"), Error);
    EXPECT_TRUE(fs::is_symlink(in_folder(name)));
  }
  EXPECT_EQ(files(), 2U);
}

TEST_F(WholeFile, IsWrittenIntoADeviceWhichStays) {
  write_whole("/dev/null", "gone");
  EXPECT_TRUE(fs::is_character_file("/dev/null"));
}

TEST_F(WholeFile, LeavesWhatWasThereWhereThereIsNoRoom) {
  write_whole(in_folder("a"), "old");
  const pid_t child = fork();
  if (child == 0) {
    const rlimit most{1000, 1000};
    setrlimit(RLIMIT_FSIZE, &most);
    int code = 0;
    try {
      write_whole(in_folder("a"), std::string(5000, 'x'));
    } catch (const Error& problem) {
      code = problem.rule().find("too large") != std::string::npos ? 42 : 1;
    }
    _exit(code);
  }
  int status = 0;
  ASSERT_EQ(waitpid(child, &status, 0), child);
  ASSERT_TRUE(WIFEXITED(status)) << "ended by signal " << WTERMSIG(status);
  EXPECT_EQ(WEXITSTATUS(status), 42);
  EXPECT_EQ(bytes_of(in_folder("a")), "old");
  EXPECT_EQ(files(), 1U);
}

TEST_F(WholeFile, WithoutRoomIsTheMachinesFault) {
  const Error full = test::error_of([] {
    write_whole("/dev/full", "x");
    return 0;
  });
  EXPECT_EQ(full.code(), ErrorCode::system);
  EXPECT_THAT(full.rule(), HasSubstr("No space"));
}

TEST_F(WholeFile, ThatCanNotBeNamesItselfAndTheReason) {
  const Error problem = test::error_of([&] { return write_whole("/nowhere/at/all", "x"); });
  EXPECT_EQ(problem.code(), ErrorCode::file_access);
  EXPECT_EQ(problem.file(), "/nowhere/at/all");
  EXPECT_THAT(problem.rule(), HasSubstr("No such file"));
}

TEST_F(WholeFile, IsNeverReadFromAPipe) {
  ASSERT_EQ(mkfifo(in_folder("pipe").c_str(), 0600), 0);
  const Error problem = test::error_of([&] { return bytes_of(in_folder("pipe")); });
  EXPECT_EQ(problem.rule(), "this is no ordinary file");
}

}  // namespace spotblue::whole_file_test
