#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <sstream>
#include <string>
#include <vector>

#include "command/beside.hpp"
#include "command/verbs.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue::command {
namespace {

namespace fs = std::filesystem;

constexpr const char* kInterpreter = "/usr/bin/python3";

// The package goes first, so that the program and what it runs are of one build.
void put_on_path(const fs::path& folder) {
  const char* const before = std::getenv("PYTHONPATH");
  std::string paths = folder.string();
  std::istringstream entries(before != nullptr ? before : "");
  for (std::string entry; std::getline(entries, entry, ':');) {
    // An empty one would stand for the folder that the user is in, and whatever lies there.
    paths += entry.empty() ? "" : ":" + entry;
  }
  setenv("PYTHONPATH", paths.c_str(), 1);
}

// Already read by the table: an operand as it is behind "=", an option as "--unit=in" or "--every".
std::vector<std::string> words_for_python(const Given& given) {
  std::vector<std::string> words{given.verb->name};
  for (const std::string& operand : given.operands) {
    words.push_back("=" + operand);
  }
  for (const auto& [name, text] : given.options) {
    words.push_back(std::string(name).append("=").append(text));
  }
  return words;
}

}  // namespace

ExitCode run_in_python(const Given& given) {
  const fs::path script = fs::path("spotblue") / "shelf" / "__main__.py";
  const fs::path folder = folder_beside_program(
      {"../python", "../lib/python3/dist-packages", SPOTBLUE_PYTHON_FROM_PROGRAM}, script,
      "the Python package spotblue is not there; build or install with SPOTBLUE_PYTHON on: the "
      "verbs "
      "library and which are its own");
  put_on_path(folder);
  // Another interpreter's home, where it is set, ends this one before its first line.
  unsetenv("PYTHONHOME");
  // -P: a folder called spotblue where the user stands must not pass for the package. The script by
  // its path: so it is the first of the package to run, and can say what is missing.
  std::vector<std::string> words{kInterpreter, "-P", (folder / script).string()};
  const std::vector<std::string> rest = words_for_python(given);
  words.insert(words.end(), rest.begin(), rest.end());
  std::vector<char*> arguments;
  arguments.reserve(words.size() + 1);
  for (std::string& word : words) {
    arguments.push_back(word.data());
  }
  arguments.push_back(nullptr);
  // Python answers Ctrl-C with a traceback until its script's first line: held back until there.
  sigset_t interrupt;
  sigset_t before;
  sigemptyset(&interrupt);
  sigaddset(&interrupt, SIGINT);
  sigprocmask(SIG_BLOCK, &interrupt, &before);
  execv(kInterpreter, arguments.data());
  sigprocmask(SIG_SETMASK, &before, nullptr);
  throw Error(ErrorCode::file_access, {.file = kInterpreter, .place = ""}, "cannot be run",
              "install Debian's python3");
}

}  // namespace spotblue::command
