// The document as STEP AP242, with what Open CASCADE's writer gets wrong about sizes put right.

#include <fmt/format.h>

#include <IFSelect_ReturnStatus.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <STEPControl_StepModelType.hxx>
#include <StepData_StepModel.hxx>
#include <XSControl_WorkSession.hxx>
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <limits>
#include <nlohmann/json.hpp>

#include "geometry/occt/occt_silence.hpp"
#include "geometry/occt/occt_versions.hpp"
#include "geometry/part21/step_letters.hpp"
#include "plugin/harness/commands.hpp"
#include "plugin/harness/document_sizes.hpp"
#include "plugin/harness/saved_document.hpp"
#include "plugin/harness/step_mending.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/whole_file.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

Error no_room(const std::filesystem::path& target) {
  return {ErrorCode::system,
          {shown_name(target), ""},
          "cannot be written: the temp folder has no room for its draft",
          "make room there, or name another in TMPDIR"};
}

/// A folder of its own that goes with it: Open CASCADE opens no name that is not UTF-8.
class TempFolder {
 public:
  /// @throws Error system, naming `target`, where there is no room for one.
  explicit TempFolder(const std::filesystem::path& target) {
    std::error_code trouble;
    const std::filesystem::path temp = std::filesystem::temp_directory_path(trouble);
    std::string name = (temp / "spotblue-XXXXXX").string();
    if (trouble || mkdtemp(name.data()) == nullptr) {
      throw no_room(target);
    }
    path_ = name;
  }
  ~TempFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  TempFolder(const TempFolder&) = delete;
  TempFolder& operator=(const TempFolder&) = delete;
  TempFolder(TempFolder&&) = delete;
  TempFolder& operator=(TempFolder&&) = delete;

  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

std::string step_of(STEPCAFControl_Writer& writer, const Model& meant, std::size_t sizes,
                    const std::filesystem::path& target) {
  const TempFolder folder(target);
  const std::filesystem::path draft = folder.path() / "document.step";
  // The writer does not always see that there was no more room.
  if (writer.Write(draft.c_str()) != IFSelect_RetDone || !ends_as_step(draft)) {
    throw no_room(target);
  }
  code_letters_in(draft);
  require_as_meant(draft, meant, sizes, target);
  return read_bytes(draft, std::numeric_limits<double>::max(), "a STEP file");
}

// What the document was checked by, and the file that it is kept in.
std::vector<std::filesystem::path> inputs_of(const Subject& subject) {
  std::vector<std::filesystem::path> inputs;
  if (subject.checked) {
    inputs.push_back(path_of_shown(subject.result.job.file));
  }
  if (subject.document->IsSaved()) {
    TCollection_AsciiString path(subject.document->GetPath());
    path += "/";
    path += TCollection_AsciiString(subject.document->GetName());
    inputs.emplace_back(path.ToCString());
  }
  return inputs;
}

}  // namespace

Json save_command(Session& session, const Arguments& arguments) {
  arguments.expect(2, 2);
  const std::string& file = arguments.words()[1];
  const std::filesystem::path target = path_of_shown(file);
  const Subject& found = session.document_subject(arguments.words()[0]);
  refuse_overwriting(target, inputs_of(found));
  const OcctSilence silence;
  STEPCAFControl_Controller::Init();
  const OcctSetting schema("write.step.schema", "AP242DIS");
  const OcctSetting unit("write.step.unit",
                         "MM");  // the writer scales shapes, but no sizes, to inches
  STEPCAFControl_Writer writer;
  occt::write_lengths_in(writer.Writer().WS(), 1.0);
  writer.SetColorMode(Standard_True);
  writer.SetNameMode(Standard_True);
  writer.SetLayerMode(Standard_True);
  writer.SetDimTolMode(Standard_True);
  if (!writer.Transfer(found.document, STEPControl_AsIs)) {
    throw Error(ErrorCode::open_cascade_failed, {file, ""},
                "Open CASCADE can not put the document in STEP",
                "check its shapes with checkshape");
  }
  const Written written =
      mend_sizes(Handle(StepData_StepModel)::DownCast(writer.Writer().WS()->Model()));
  const std::vector<SizeThere> sizes = sizes_in(found);
  const std::size_t all = dimensions_in(found);
  const std::size_t lost = all - std::min(all, written.sizes);
  write_whole(target, step_of(writer, found.result.look.model,
                              sizes.size() - std::min(sizes.size(), lost), target));
  return {{"file", file},
          {"sizes", written.sizes},
          {"classes", written.classes},
          {"doubtful", std::ranges::count_if(
                           sizes, [](const SizeThere& one) { return !one.size.doubt.empty(); })},
          {"lost", lost}};
}

}  // namespace spotblue::plugin
