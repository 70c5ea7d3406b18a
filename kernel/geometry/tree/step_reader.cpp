#include "geometry/tree/step_reader.hpp"

#include <IFSelect_ReturnStatus.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <STEPControl_Controller.hxx>
#include <TransferBRep.hxx>
#include <XSControl_TransferReader.hxx>
#include <XSControl_WorkSession.hxx>
#include <istream>
#include <optional>
#include <streambuf>
#include <string>

#include "geometry/occt/occt_versions.hpp"
#include "geometry/part21/step_plain.hpp"
#include "geometry/tree/step_faults.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// Reads from bytes that live elsewhere.
class BytesBuffer : public std::streambuf {
 public:
  explicit BytesBuffer(std::string_view bytes) {
    char* const begin = const_cast<char*>(bytes.data());  // the get area is never written to
    setg(begin, begin, begin + bytes.size());
  }
};

void set_up_kernel() {
  Message::DefaultMessenger()->RemovePrinters(STANDARD_TYPE(Message_Printer));
  STEPControl_Controller::Init();
  Interface_Static::SetCVal("xstep.cascade.unit", "MM");
  Interface_Static::SetIVal("read.step.product.mode", 1);
  Interface_Static::SetIVal("read.stdsameparameter.mode", 0);
}

}  // namespace

StepReader::StepReader(std::string_view text, Completeness completeness)
    : reader_((set_up_kernel(), STEPControl_Reader())) {
  const std::optional<std::string> plain = plain_step(text);
  BytesBuffer buffer(plain ? std::string_view(*plain) : text);
  std::istream stream(&buffer);
  if (reader_.ReadStream("model", stream) != IFSelect_RetDone) {
    throw Error(ErrorCode::unreadable, {}, "Open CASCADE refuses the file's text as STEP",
                "export the file again");
  }
  faults_ = entity_faults(*reader_.StepModel());
  refuse_faults(faults_, "", completeness);
  occt::leave_unhealed(reader_);
  reader_.TransferRoots();
  entities_ = reader_.StepModel();
  process_ = reader_.WS()->TransferReader()->TransientProcess();
}

TopoDS_Shape StepReader::shape_of(const Handle(Standard_Transient) & entity) const {
  return entity.IsNull() ? TopoDS_Shape() : TransferBRep::ShapeResult(process_, entity);
}

int StepReader::number_of(const Handle(Standard_Transient) & entity) const {
  return entities_->IdentLabel(entity);
}

}  // namespace spotblue
