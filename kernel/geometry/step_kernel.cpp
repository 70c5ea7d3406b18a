#include "geometry/step_kernel.hpp"

#include <IFSelect_ReturnStatus.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <STEPControl_Controller.hxx>
#include <TransferBRep.hxx>
#include <XSAlgo.hxx>
#include <XSAlgo_AlgoContainer.hxx>
#include <XSControl_TransferReader.hxx>
#include <XSControl_WorkSession.hxx>
#include <istream>
#include <streambuf>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// Stands where the kernel looks for what to do with every shape it has made, and does nothing:
// shape healing is three quarters of the transfer, and measuring needs none of it.
class Unhealed : public XSAlgo_AlgoContainer {
 public:
  TopoDS_Shape ProcessShape(const TopoDS_Shape& shape, Standard_Real /*precision*/,
                            Standard_Real /*tolerance*/, Standard_CString /*resource*/,
                            Standard_CString /*sequence*/, Handle(Standard_Transient) & /*info*/,
                            const Message_ProgressRange& /*progress*/,
                            Standard_Boolean /*non_manifold*/) const override {
    return shape;
  }
};

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
  XSAlgo::SetAlgoContainer(new Unhealed);
  Interface_Static::SetCVal("xstep.cascade.unit", "MM");
  Interface_Static::SetIVal("read.step.product.mode", 1);
  Interface_Static::SetIVal("read.stdsameparameter.mode", 0);
}

}  // namespace

StepKernel::StepKernel(std::string_view text) : reader_((set_up_kernel(), STEPControl_Reader())) {
  BytesBuffer buffer(text);
  std::istream stream(&buffer);
  if (reader_.ReadStream("model", stream) != IFSelect_RetDone) {
    throw Error(ErrorCode::unreadable, {}, "the kernel refuses the file's text as STEP",
                "export the file again");
  }
  reader_.TransferRoots();
  entities_ = reader_.StepModel();
  process_ = reader_.WS()->TransferReader()->TransientProcess();
}

TopoDS_Shape StepKernel::shape_of(const Handle(Standard_Transient) & entity) const {
  return entity.IsNull() ? TopoDS_Shape() : TransferBRep::ShapeResult(process_, entity);
}

int StepKernel::number_of(const Handle(Standard_Transient) & entity) const {
  return entities_->IdentLabel(entity);
}

}  // namespace spotblue
