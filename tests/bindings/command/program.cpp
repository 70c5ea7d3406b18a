#include "bindings/command/program.hpp"

#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace spotblue::test {

namespace fs = std::filesystem;

const char* const kPressMockup = R"(title = "Press"
[[part]]
name = "Stud"
kind = "turned"
outside = [
  { diameter = 60, length = 8 },
  { diameter = 44.035, length = 40 },
]
[[part]]
name = "Collar"
kind = "ring"
outside = 80
inside = 44
thickness = 20
[[place]]
part = "Stud"
at = 0
[[place]]
part = "Collar"
against = "Stud"
against_face = "outside 1 end"
)";

Bench::Bench() {
  std::string name = (fs::temp_directory_path() / "spotblue-command-XXXXXX").string();
  folder_ = ::mkdtemp(name.data());
}

Bench::~Bench() {
  std::error_code ignored;
  fs::remove_all(folder_, ignored);
}

Said Bench::run(const std::string& arguments) const {
  const std::string command = "cd '" + folder_.string() + "' && { '" SPOTBLUE_PROGRAM "' " +
                              arguments + " ; } >.out 2>.err";
  const int status = std::system(command.c_str());
  Said said{WIFEXITED(status) ? WEXITSTATUS(status) : -1, read(".out"), read(".err")};
  fs::remove(folder_ / ".out");
  fs::remove(folder_ / ".err");
  return said;
}

void Bench::write(const std::string& name, const std::string& text) const {
  std::ofstream(folder_ / name) << text;
}

std::string Bench::read(const std::string& name) const {
  std::ifstream stream(folder_ / name, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

std::size_t Bench::files() const {
  return static_cast<std::size_t>(
      std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
}

}  // namespace spotblue::test
