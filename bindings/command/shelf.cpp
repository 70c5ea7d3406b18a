#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "help.hpp"
#include "spotblue/base/error.hpp"
#include "verbs.hpp"

namespace spotblue::command {
namespace {

namespace fs = std::filesystem;

constexpr const char* kInterpreter = "/usr/bin/python3";

// Where the Python package lies beside this program: in a build tree, or installed.
fs::path package_folder() {
  const fs::path here = fs::read_symlink("/proc/self/exe").parent_path();
  for (const char* const beside : {"../python", "../lib/python3/dist-packages"}) {
    fs::path folder = (here / beside).lexically_normal();
    if (fs::exists(folder / "spotblue" / "shelf" / "__main__.py")) {
      return folder;
    }
  }
  throw Error(ErrorCode::file_access,
              {.file = (here / "../python/spotblue").lexically_normal().string(), .place = ""},
              "the Python package spotblue is not there",
              "build or install with SPOTBLUE_PYTHON on; the verbs library and which are its own");
}

// The package goes first, so that the program and what it runs are of one build.
void put_on_path(const fs::path& folder) {
  const char* const before = std::getenv("PYTHONPATH");
  std::string paths = folder.string();
  if (before != nullptr && *before != '\0') {
    paths += ':';
    paths += before;
  }
  setenv("PYTHONPATH", paths.c_str(), 1);
}

[[noreturn]] void become_python(const std::string& verb, const std::vector<std::string>& rest) {
  put_on_path(package_folder());
  // -P: a folder called spotblue where the user stands must not pass for the package.
  std::vector<std::string> words{kInterpreter, "-P", "-m", "spotblue.shelf", verb};
  words.insert(words.end(), rest.begin(), rest.end());
  std::vector<char*> arguments;
  arguments.reserve(words.size() + 1);
  for (std::string& word : words) {
    arguments.push_back(word.data());
  }
  arguments.push_back(nullptr);
  execv(kInterpreter, arguments.data());
  throw Error(ErrorCode::file_access, {.file = kInterpreter, .place = ""}, "cannot be run",
              "install Debian's python3");
}

void add_verb(CLI::App& app, Run& chosen, const std::string& name) {
  CLI::App* verb = app.add_subcommand(name);
  // Python's own reading of the words is the only one, --help among them.
  verb->set_help_flag();
  verb->prefix_command();
  verb->callback([verb, name, &chosen] {
    chosen = [name, rest = verb->remaining()]() -> ExitCode { become_python(name, rest); };
  });
}

}  // namespace

void add_shelf(CLI::App& app, Run& chosen) {
  add_verb(app, chosen, "library");
  add_verb(app, chosen, "which");
}

}  // namespace spotblue::command
