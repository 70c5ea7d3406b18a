#include "spotblue/geometry/mockup_write.hpp"

#include <fmt/format.h>

#include <APIHeaderSection_MakeHeader.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <StepData_StepModel.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopLoc_Location.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <XSControl_WorkSession.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Trsf.hxx>
#include <limits>
#include <map>
#include <system_error>
#include <utility>

#include "base/error_kinds.hpp"
#include "geometry/mockup/mockup_face_names.hpp"
#include "geometry/mockup/mockup_solid.hpp"
#include "geometry/occt/guard.hpp"
#include "geometry/occt/occt_quiet.hpp"
#include "geometry/occt/occt_values.hpp"
#include "geometry/occt/occt_versions.hpp"
#include "geometry/occt/shape_store.hpp"
#include "geometry/part21/step_declared.hpp"
#include "geometry/part21/step_letters.hpp"
#include "geometry/part21/step_name.hpp"
#include "geometry/write/face_names.hpp"
#include "geometry/write/step_author.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/geometry/mockup_placing.hpp"

namespace spotblue {
namespace {

// A document of Open CASCADE's, closed when this goes.
class Document {
 public:
  Document() { XCAFApp_Application::GetApplication()->NewDocument("MDTV-XCAF", document_); }
  ~Document() { XCAFApp_Application::GetApplication()->Close(document_); }
  Document(const Document&) = delete;
  Document& operator=(const Document&) = delete;

  [[nodiscard]] const Handle(TDocStd_Document) & get() const { return document_; }
  [[nodiscard]] Handle(XCAFDoc_ShapeTool) shapes() const {
    return XCAFDoc_DocumentTool::ShapeTool(document_->Main());
  }

 private:
  Handle(TDocStd_Document) document_;
};

void name_label(const TDF_Label& label, const std::string& name) {
  TDataStd_Name::Set(label, TCollection_ExtendedString(name.c_str(), true));
}

// Texts of the header have one line and end at no NUL.
std::string plain_line(std::string words) {
  std::replace_if(
      words.begin(), words.end(),
      [](char c) { return static_cast<unsigned char>(c) < ' ' || c == '\x7F'; }, ' ');
  return words;
}

std::vector<TDF_Label> add_products(const Mockup& mockup, const Document& document,
                                    std::vector<CalledShape>& named) {
  std::vector<TDF_Label> products;
  for (const MockupPart& part : mockup.parts) {
    const TopoDS_Shape solid = make_solid(place_of(mockup, part), part);
    const TDF_Label label = document.shapes()->AddShape(solid, false);
    name_label(label, part.name);
    for (NamedFace& face : named_faces(solid, part)) {
      named.push_back({face.face, plain_line(std::move(face.name))});
    }
    products.push_back(label);
  }
  return products;
}

// Gives back the faces that are to have a name.
std::vector<CalledShape> add_assembly(const Mockup& mockup, const std::vector<PlacedPart>& placed,
                                      const Document& document) {
  std::vector<CalledShape> named;
  const std::vector<TDF_Label> products = add_products(mockup, document, named);
  if (mockup.placements.empty()) {
    return named;
  }
  const Handle(XCAFDoc_ShapeTool) shapes = document.shapes();
  const TDF_Label top = shapes->NewShape();
  name_label(top, mockup.title.empty() ? "Assembly" : mockup.title);
  std::map<std::string, TDF_Label> groups;
  for (const PlacedPart& instance : placed) {
    TDF_Label parent = top;
    if (!instance.group.empty()) {
      const auto [entry, is_new] = groups.try_emplace(instance.group);
      if (is_new) {
        entry->second = shapes->NewShape();
        name_label(entry->second, instance.group);
        name_label(shapes->AddComponent(top, entry->second, TopLoc_Location()), instance.group);
      }
      parent = entry->second;
    }
    name_label(shapes->AddComponent(parent, products[instance.part],
                                    TopLoc_Location(to_trsf(instance.frame))),
               instance.name);
  }
  shapes->UpdateAssemblies();
  return named;
}

const char* schema_of(StepProtocol protocol) {
  switch (protocol) {
    case StepProtocol::ap203:
      return "AP203";
    case StepProtocol::ap242:
      return "AP242DIS";
    case StepProtocol::ap214:
      break;
  }
  return "AP214IS";
}

void write_header(const Mockup& mockup, const Handle(StepData_StepModel) & model) {
  APIHeaderSection_MakeHeader header(model);
  const auto text = [](const std::string& words) {
    return new TCollection_HAsciiString(words.c_str());
  };
  header.SetName(text(mockup.title));
  header.SetDescriptionValue(1, text(mockup.about.empty() ? "mock-up" : plain_line(mockup.about)));
  header.SetOriginatingSystem(text(std::string("spotblue ") + kVersion));
  header.SetAuthorValue(1, text(""));
  header.SetOrganizationValue(1, text(""));
}

// By the text: protocol, unit, and each part by name, one solid, as often as it was placed.
std::string difference_from(const Mockup& mockup, const std::vector<PlacedPart>& placed,
                            const Declared& declared) {
  if (declared.protocol != word_of(mockup.protocol)) {
    return fmt::format("its header says {}", declared.protocol);
  }
  if (declared.unit != (mockup.unit == LengthUnit::mm ? "mm" : "inch")) {
    return fmt::format("its unit is '{}'", declared.unit);
  }
  std::map<std::string, double> missing;
  for (const PlacedPart& one : placed) {
    missing[clean_name(mockup.parts[one.part].name)] += 1.0;
  }
  for (const DeclaredPart& part : declared.parts) {
    missing[part.name] -= part.solids * part.occurrences;
  }
  for (const auto& [name, count] : missing) {
    if (count != 0.0) {
      return fmt::format("part '{}' is there {} times {}", name, std::abs(count),
                         count > 0.0 ? "too few" : "too many");
    }
  }
  return {};
}

void require_as_meant(const std::filesystem::path& draft, const Mockup& mockup,
                      const std::vector<PlacedPart>& placed, const std::filesystem::path& out) {
  const std::string name = shown_name(out);
  std::string why;
  try {
    const std::string text = read_bytes(draft, std::numeric_limits<double>::max(), "a STEP file");
    const StepText entities(text, name, {});
    why = difference_from(mockup, placed, read_declared(entities, name, {}));
  } catch (const Error& error) {
    if (says_nothing_of_content(error.code())) {
      throw;
    }
    why = error.rule();
  }
  if (!why.empty()) {
    throw Error(ErrorCode::open_cascade_failed, {name, ""},
                "not written, since it does not read back as meant: " + why,
                "what was there is as it was; simplify the mock-up, or report it");
  }
}

void write_document(const Mockup& mockup, const std::vector<PlacedPart>& placed,
                    const Document& document, const std::vector<CalledShape>& named,
                    OcctQuiet& quiet, const std::filesystem::path& out) {
  STEPCAFControl_Controller::Init();
  quiet.set("write.step.schema", schema_of(mockup.protocol));
  quiet.set("write.step.unit", mockup.unit == LengthUnit::mm ? "MM" : "INCH");
  quiet.set("write.surfacecurve.mode", "0");
  STEPCAFControl_Writer writer;
  writer.SetNameMode(true);
  leave_author_out(writer.Writer().WS());
  occt::write_lengths_in(writer.Writer().WS(), mockup.unit == LengthUnit::mm ? 1.0 : 25.4);
  if (!writer.Transfer(document.get(), STEPControl_AsIs)) {
    throw Error(ErrorCode::open_cascade_failed, {mockup.file, ""},
                "Open CASCADE cannot turn the mock-up into STEP", "simplify the mock-up");
  }
  write_face_names(named, writer.Writer().WS());
  write_header(mockup, Handle(StepData_StepModel)::DownCast(writer.Writer().WS()->Model()));
  // Open CASCADE opens no name that is not UTF-8, so it writes under one of ours.
  const ShapeStore folder(make_shape_folder());
  const std::filesystem::path draft = folder.folder() / "model.step";
  if (writer.Write(draft.c_str()) != IFSelect_RetDone || !ends_as_step(draft)) {
    throw Error(ErrorCode::system, {shown_name(draft), ""}, "the file cannot be written",
                "make room in the temp folder, or name another in TMPDIR");
  }
  code_letters_in(draft);
  write_whole(out, read_bytes(draft, std::numeric_limits<double>::max(), "a STEP file"),
              [&](const std::filesystem::path& written) {
                require_as_meant(written, mockup, placed, out);
              });
}

}  // namespace

void write_mockup(const Mockup& mockup, const std::filesystem::path& out) {
  refuse_overwriting(out, mockup.read_from);
  check_parts(mockup);
  const std::vector<PlacedPart> placed = place_parts(mockup);
  guarded("writing " + shown_name(out), [&] {
    OcctQuiet quiet;
    const Document document;
    const std::vector<CalledShape> named = add_assembly(mockup, placed, document);
    write_document(mockup, placed, document, named, quiet, out);
  });
}

}  // namespace spotblue
