#include "geometry/read/document_file.hpp"

#include <fmt/format.h>

#include <BinXCAFDrivers.hxx>
#include <Message.hxx>
#include <PCDM_ReaderStatus.hxx>
#include <TDF_Label.hxx>
#include <sstream>
#include <utility>

#include "geometry/occt/occt_words.hpp"
#include "geometry/read/completeness.hpp"
#include "geometry/read/given_names.hpp"
#include "geometry/sizes/document_sizes.hpp"

namespace spotblue {
namespace {

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

// One that nothing was ever put in: Open CASCADE writes it, but says on reading that it is of
// another format.
bool is_empty_document(std::string_view bytes) {
  constexpr std::size_t kHeader = 1000;
  constexpr std::string_view kNoTypes("START_TYPES\x09\0\0\0END_TYPES", 24);
  return bytes.substr(0, kHeader).find("FILE_FORMAT: BinXCAF") != std::string_view::npos &&
         bytes.substr(0, kHeader).find(kNoTypes) != std::string_view::npos;
}

}  // namespace

DocumentFile::DocumentFile(std::string_view bytes, Completeness completeness)
    : application_(new TDocStd_Application) {
  const OcctWords application_says(application_->MessageDriver());
  const OcctWords says(Message::DefaultMessenger());
  BinXCAFDrivers::DefineFormat(application_);
  std::istringstream in{std::string(bytes)};
  const PCDM_ReaderStatus status = application_->Open(in, document_);
  const std::string failure = application_says.failure() + says.failure();
  if (is_empty_document(bytes)) {
    throw refused("the document is empty, it holds no shapes", "save it with the parts in it");
  }
  if (status != PCDM_RS_OK || document_.IsNull()) {
    throw not_opened(status, failure);
  }
  if (!failure.empty()) {
    throw not_opened(PCDM_RS_DriverFailure, failure);
  }
  said_ = application_says.warnings() + says.warnings();
  if (!said_.empty() && completeness == Completeness::all_or_error) {
    throw Error(ErrorCode::incomplete, {"", ""},
                fmt::format("Open CASCADE leaves something out on reading: {}", said_),
                "save it again, or accept a partial model");
  }
}

DocumentFile::~DocumentFile() { application_->Close(document_); }

DocumentTree DocumentFile::tree(const ReadLimits& limits) const {
  return read_document_tree(
      document_->Main(), {OtherLengths::turned_into_mm, limits.occurrences, limits.nesting_depth});
}

void DocumentFile::add_sizes(const DocumentTree& tree, Model& model) const {
  if (!said_.empty()) {
    leave_out({"document", fmt::format("Open CASCADE says on reading: {}", said_)}, model);
  }
  if (tree.mm_per_unit != 1.0) {
    model.notes.push_back(
        {"sizes", "what the document states is left out, since its lengths are not in mm"});
    return;
  }
  add_given_names(document_->Main(), tree.tree, model);
  SettledSizes stated = settled_in_document(document_->Main(), tree.tree, model).settled;
  model.semantic_sizes = std::move(stated.sizes);
  model.notes.insert(model.notes.end(), stated.notes.begin(), stated.notes.end());
}

}  // namespace spotblue
