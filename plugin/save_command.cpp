// The document as STEP AP242, with what the kernel's writer gets wrong about classes put right.

#include <fmt/format.h>

#include <APIHeaderSection_MakeHeader.hxx>
#include <IFSelect_ReturnStatus.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <STEPControl_StepModelType.hxx>
#include <Standard_Version.hxx>
#include <StepData_StepModel.hxx>
#include <StepShape_LimitsAndFits.hxx>
#include <TCollection_HAsciiString.hxx>
#include <XSControl_WorkSession.hxx>
#include <charconv>
#include <nlohmann/json.hpp>
#include <string_view>
#include <utility>

#include "commands.hpp"
#include "document_sizes.hpp"

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

// The writer counts grades from IT01 and writes H7 as grade 9; 01 alone is written right.
std::size_t mend_grades(const Handle(StepData_StepModel) & model) {
  std::size_t classes = 0;
  for (int i = 1; i <= model->NbEntities(); ++i) {
    const auto fit = Handle(StepShape_LimitsAndFits)::DownCast(model->Value(i));
    if (fit.IsNull() || fit->Grade().IsNull()) {
      continue;
    }
    ++classes;
    const std::string_view text(fit->Grade()->ToCString());
    int grade = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), grade);
    if (!text.starts_with('0') && trouble == std::errc() && end == text.data() + text.size()) {
      fit->SetGrade(new TCollection_HAsciiString(grade - 2));
    }
  }
  return classes;
}

// Who reads the file may know the kernel's writer by its name and put the grades right himself.
void sign(const Handle(StepData_StepModel) & model) {
  APIHeaderSection_MakeHeader header(model);
  const std::string writer = "spotblue " SPOTBLUE_VERSION " on Open CASCADE " OCC_VERSION_COMPLETE;
  header.SetPreprocessorVersion(new TCollection_HAsciiString(writer.c_str()));
}

std::vector<DocumentSize> classed(const Subject& subject) {
  std::vector<DocumentSize> sizes = sizes_in(subject);
  std::erase_if(sizes, [](const DocumentSize& size) { return size.tolerance_class.empty(); });
  return sizes;
}

// The kernel writes the letter J and never reads it back.
void refuse_unreadable(const std::vector<DocumentSize>& sizes) {
  for (const DocumentSize& size : sizes) {
    const std::string& text = size.tolerance_class;
    if ((text[0] == 'J' || text[0] == 'j') && text.size() > 1 && text[1] != 'S' && text[1] != 's') {
      throw mistake(
          fmt::format("'{}'", size.feature),
          fmt::format("has the class {}, which this kernel can not read back from STEP", text),
          "choose a js class, or save the binary document with SaveAs");
    }
  }
}

}  // namespace

Json save_command(const Arguments& arguments) {
  arguments.expect(2, 2);
  const std::string& file = arguments.words()[1];
  const Subject& found = document_subject(arguments.words()[0]);
  const std::vector<DocumentSize> sizes = classed(found);
  refuse_unreadable(sizes);
  const Silence silence;
  STEPCAFControl_Controller::Init();
  const Setting schema("write.step.schema", "AP242DIS");
  const Setting unit("write.step.unit", "MM");  // the writer scales shapes, but no sizes, to inches
  STEPCAFControl_Writer writer;
  writer.SetColorMode(Standard_True);
  writer.SetNameMode(Standard_True);
  writer.SetLayerMode(Standard_True);
  writer.SetDimTolMode(Standard_True);
  if (!writer.Transfer(found.document, STEPControl_AsIs)) {
    throw Error(ErrorCode::kernel_failure, {file, ""},
                "the kernel can not put the document in STEP", "check its shapes with checkshape");
  }
  const auto model = Handle(StepData_StepModel)::DownCast(writer.Writer().WS()->Model());
  const std::size_t written = mend_grades(model);
  sign(model);
  if (writer.Write(file.c_str()) != IFSelect_RetDone) {
    throw Error(ErrorCode::file_access, {file, ""}, "can not be written",
                "check the folder, its rights and the room on the disk");
  }
  return {{"file", file}, {"classes", written}, {"lost", sizes.size() - written}};
}

}  // namespace spotblue::plugin
