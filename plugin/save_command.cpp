// The document as STEP AP242, with what the kernel's writer gets wrong about sizes put right.

#include <fmt/format.h>

#include <IFSelect_ReturnStatus.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_SequenceOfPrinters.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <STEPControl_StepModelType.hxx>
#include <StepData_StepModel.hxx>
#include <XSControl_WorkSession.hxx>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <utility>

#include "commands.hpp"
#include "document_sizes.hpp"
#include "geometry/occt_versions.hpp"
#include "geometry/step_letters.hpp"
#include "spotblue/base/shown_name.hpp"
#include "step_mending.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

/// One of the kernel's process-wide settings for a while.
class Setting {
 public:
  Setting(std::string name, const char* value) : name_(std::move(name)) {
    const char* before = Interface_Static::CVal(name_.c_str());
    before_ = before == nullptr ? "" : before;
    if (!Interface_Static::SetCVal(name_.c_str(), value)) {
      throw Error(ErrorCode::kernel_failure, {"", name_},
                  fmt::format("the kernel refuses the setting {}", value),
                  "check the version of Open CASCADE");
    }
  }
  ~Setting() { Interface_Static::SetCVal(name_.c_str(), before_.c_str()); }
  Setting(const Setting&) = delete;
  Setting& operator=(const Setting&) = delete;
  Setting(Setting&&) = delete;
  Setting& operator=(Setting&&) = delete;

 private:
  std::string name_;
  std::string before_;
};

/// The kernel's writer prints statistics on stdout: not while this lives.
class Silence {
 public:
  Silence() : printers_(Message::DefaultMessenger()->ChangePrinters()) {
    Message::DefaultMessenger()->ChangePrinters().Clear();
  }
  ~Silence() { Message::DefaultMessenger()->ChangePrinters() = printers_; }
  Silence(const Silence&) = delete;
  Silence& operator=(const Silence&) = delete;
  Silence(Silence&&) = delete;
  Silence& operator=(Silence&&) = delete;

 private:
  Message_SequenceOfPrinters printers_;
};

bool ends_as_step(const std::filesystem::path& file) {
  constexpr std::string_view kEnd = "END-ISO-10303-21;";
  std::ifstream in(file, std::ios::binary);
  std::string tail(64, '\0');
  in.seekg(-static_cast<std::streamoff>(tail.size()), std::ios::end);
  in.read(tail.data(), static_cast<std::streamsize>(tail.size()));
  return in.good() && tail.find(kEnd) != std::string::npos;
}

// The file appears whole or not at all.
void write(STEPCAFControl_Writer& writer, const std::filesystem::path& file) {
  std::error_code trouble;
  const auto status = std::filesystem::status(file, trouble);
  if (std::filesystem::exists(status) && !std::filesystem::is_regular_file(status)) {
    throw Error(ErrorCode::file_access, {file.string(), ""}, "is no ordinary file",
                "name a STEP file");
  }
  std::filesystem::path partial = file;
  partial += ".partial";
  trouble.clear();
  const bool whole = writer.Write(partial.c_str()) == IFSelect_RetDone && ends_as_step(partial);
  if (whole) {
    code_letters_in(partial);
    std::filesystem::rename(partial, file, trouble);
  }
  if (!whole || trouble) {
    std::error_code ignored;
    std::filesystem::remove(partial, ignored);
    throw Error(ErrorCode::file_access, {file.string(), ""}, "can not be written",
                "check the folder, its rights and the room on the disk");
  }
}

}  // namespace

Json save_command(const Arguments& arguments) {
  arguments.expect(2, 2);
  const std::string& file = arguments.words()[1];
  const Subject& found = document_subject(arguments.words()[0]);
  const Silence silence;
  STEPCAFControl_Controller::Init();
  const Setting schema("write.step.schema", "AP242DIS");
  const Setting unit("write.step.unit", "MM");  // the writer scales shapes, but no sizes, to inches
  STEPCAFControl_Writer writer;
  occt::write_lengths_in(writer.Writer().WS(), 1.0);
  writer.SetColorMode(Standard_True);
  writer.SetNameMode(Standard_True);
  writer.SetLayerMode(Standard_True);
  writer.SetDimTolMode(Standard_True);
  if (!writer.Transfer(found.document, STEPControl_AsIs)) {
    throw Error(ErrorCode::kernel_failure, {file, ""},
                "the kernel can not put the document in STEP", "check its shapes with checkshape");
  }
  const Written written =
      mend_sizes(Handle(StepData_StepModel)::DownCast(writer.Writer().WS()->Model()));
  write(writer, path_of_shown(file));
  const std::vector<SizeThere> sizes = sizes_in(found);
  const std::size_t all = dimensions_in(found);
  return {{"file", file},
          {"sizes", written.sizes},
          {"classes", written.classes},
          {"doubtful", std::ranges::count_if(
                           sizes, [](const SizeThere& one) { return !one.size.doubt.empty(); })},
          {"lost", all - std::min(all, written.sizes)}};
}

}  // namespace spotblue::plugin
