#pragma once
// An XDE document in Open CASCADE's binary format (.xbf), opened from memory.

#include <TDocStd_Application.hxx>
#include <TDocStd_Document.hxx>
#include <string>
#include <string_view>

#include "geometry/tree/document_tree.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// Closed when it goes.
class DocumentFile {
 public:
  // Throws Error unreadable when it is damaged, cut off, empty or no XDE document; incomplete when
  // Open CASCADE leaves something out and all is wanted.
  DocumentFile(std::string_view bytes, Completeness completeness);
  ~DocumentFile();
  DocumentFile(const DocumentFile&) = delete;
  DocumentFile& operator=(const DocumentFile&) = delete;
  DocumentFile(DocumentFile&&) = delete;
  DocumentFile& operator=(DocumentFile&&) = delete;

  // In mm, whatever the document's unit. Throws as read_document_tree.
  [[nodiscard]] DocumentTree tree(const ReadLimits& limits) const;

  // The sizes it states on the products of its tree, and what Open CASCADE said while reading.
  void add_sizes(const DocumentTree& tree, Model& model) const;

 private:
  Handle(TDocStd_Application) application_;
  Handle(TDocStd_Document) document_;
  std::string said_;  // by Open CASCADE, of what it left out
};

}  // namespace spotblue
