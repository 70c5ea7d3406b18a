#include "geometry/write/step_rewrite.hpp"

#include <IFSelect_ReturnStatus.hxx>
#include <Interface_Static.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <TDocStd_Document.hxx>
#include <XCAFApp_Application.hxx>
#include <sstream>
#include <string>

#include "geometry/occt/occt_versions.hpp"
#include "geometry/part21/step_letters.hpp"
#include "geometry/part21/step_plain.hpp"
#include "geometry/write/face_names.hpp"
#include "geometry/write/step_author.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {

void rewrite_as_ap242(std::string_view text, const std::filesystem::path& out) {
  const Error failed(ErrorCode::open_cascade_failed, {},
                     "Open CASCADE cannot turn the file into AP242", "export it as AP214 or AP242");
  STEPCAFControl_Controller::Init();
  Interface_Static::SetCVal("xstep.cascade.unit", "MM");
  Interface_Static::SetCVal("write.step.unit", "MM");
  Interface_Static::SetCVal("write.step.schema", "AP242DIS");
  Interface_Static::SetCVal("write.surfacecurve.mode", "0");
  Handle(TDocStd_Document) document;
  XCAFApp_Application::GetApplication()->NewDocument("MDTV-XCAF", document);
  STEPCAFControl_Reader reader;
  reader.SetGDTMode(false);
  const std::string plain = plain_step(text).value_or(std::string(text));
  std::istringstream in{in_utf8(plain).value_or(plain)};
  if (reader.ChangeReader().ReadStream("model", in) != IFSelect_RetDone ||
      !reader.Transfer(document)) {
    throw failed;
  }
  STEPCAFControl_Writer writer;
  writer.SetDimTolMode(false);
  leave_author_out(writer.Writer().WS());
  occt::write_lengths_in(writer.Writer().WS(), 1.0);
  if (!writer.Transfer(document, STEPControl_AsIs)) {
    throw failed;
  }
  write_face_names(face_names_read(reader.ChangeReader().WS()), writer.Writer().WS());
  // The writer does not always see that there was no more room.
  if (writer.Write(out.c_str()) != IFSelect_RetDone || !ends_as_step(out)) {
    throw Error(ErrorCode::system, {shown_name(out), ""}, "the file cannot be written",
                "make room in the temp folder, or name another in TMPDIR");
  }
  code_letters_in(out);
}

}  // namespace spotblue
