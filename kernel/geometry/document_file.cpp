#include "geometry/document_file.hpp"

#include <fmt/format.h>

#include <BinXCAFDrivers.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <Message_SequenceOfPrinters.hxx>
#include <PCDM_ReaderStatus.hxx>
#include <TCollection_AsciiString.hxx>
#include <TDF_Label.hxx>
#include <sstream>
#include <utility>

#include "geometry/document_sizes.hpp"
#include "geometry/step_name.hpp"

namespace spotblue {
namespace {

// Keeps what Open CASCADE would print.
class Listener : public Message_Printer {
 public:
  struct Heard {
    std::string warning;  // the first of each
    std::string failure;
  };
  explicit Listener(Heard& heard) : heard_(heard) {}

 protected:
  void send(const TCollection_AsciiString& text, const Message_Gravity gravity) const override {
    std::string& first = gravity >= Message_Alarm ? heard_.failure : heard_.warning;
    if (gravity >= Message_Warning && first.empty()) {
      first = clean_name(text.ToCString());
    }
  }

 private:
  Heard& heard_;
};

Error refused(const std::string& what, const std::string& cure) {
  return {ErrorCode::unreadable, {"", ""}, what, cure};
}

Error not_opened(PCDM_ReaderStatus status, const std::string& said) {
  if (status == PCDM_RS_NoDriver || status == PCDM_RS_UnrecognizedFileFormat) {
    return refused("it is a document of another format than Open CASCADE's BinXCAF",
                   "save it as BinXCAF (.xbf), or export STEP");
  }
  return refused(said.empty() ? fmt::format("Open CASCADE can not read it (status {})",
                                            static_cast<int>(status))
                              : fmt::format("Open CASCADE can not read it: {}", said),
                 "the file is damaged: save it again");
}

}  // namespace

DocumentFile::DocumentFile(std::string_view bytes) : application_(new TDocStd_Application) {
  Listener::Heard heard;
  Message_SequenceOfPrinters& printers = application_->MessageDriver()->ChangePrinters();
  printers.Clear();
  printers.Append(new Listener(heard));
  BinXCAFDrivers::DefineFormat(application_);
  std::istringstream in{std::string(bytes)};
  const PCDM_ReaderStatus status = application_->Open(in, document_);
  printers.Clear();
  if (status != PCDM_RS_OK || document_.IsNull()) {
    throw not_opened(status, heard.failure);
  }
  if (!heard.failure.empty()) {
    throw not_opened(PCDM_RS_DriverFailure, heard.failure);
  }
  said_ = heard.warning;
}

DocumentFile::~DocumentFile() { application_->Close(document_); }

DocumentTree DocumentFile::tree(double most_occurrences) const {
  return read_document_tree(document_->Main(), {OtherLengths::turned_into_mm, most_occurrences});
}

void DocumentFile::add_sizes(const DocumentTree& tree, Model& model) const {
  if (!said_.empty()) {
    model.notes.push_back({"document", fmt::format("Open CASCADE says on reading: {}", said_)});
  }
  if (tree.mm_per_unit != 1.0) {
    model.notes.push_back(
        {"sizes", "what the document states is left out, since its lengths are not in mm"});
    return;
  }
  SettledSizes stated = settled_in_document(document_->Main(), tree.tree, model).settled;
  model.semantic_sizes = std::move(stated.sizes);
  model.notes.insert(model.notes.end(), stated.notes.begin(), stated.notes.end());
}

}  // namespace spotblue
