#pragma once
// STEP files that Open CASCADE's writer makes of a small assembly, and changes to their text.

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace spotblue::test {

// A folder of its own that goes with it.
class Folder {
 public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] std::filesystem::path write(std::string_view name, std::string_view text) const;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

// "Stand" holds "Frame" (a block 60 x 40 x 20 with a bore of 20 through it) and twice the assembly
// "Pair": a "Bush" (20 outside, 12 inside, 25 long, in the middle of it) with a "Pin" (two solids:
// 12 x 30, and a ball of 4 beside it). 7 bodies at their
// places, of 4, with 24 faces.
// unit: "MM", "INCH" or "M"; schema: "AP203", "AP214IS" or "AP242DIS".
[[nodiscard]] std::string stand_step(const std::string& unit, const std::string& schema);

// The same stand as AP214 in several files in `folder`, as Open CASCADE leaves parts to other
// files: "stand.stp" refers to "part-Frame.stp" and the others beside it; returns the first.
[[nodiscard]] std::filesystem::path write_stand_in_files(const std::filesystem::path& folder,
                                                         const std::string& unit);

// The text with `lines` put at the end of its DATA.
[[nodiscard]] std::string with_lines(const std::string& step, const std::string& lines);

// Entities #from.. for a tower of product definitions, of which each uses the next `copies` times;
// with `closed`, the last uses the first.
enum class Tower { open, closed };
[[nodiscard]] std::string tower_lines(int from, int levels, int copies, Tower tower);

}  // namespace spotblue::test
