#include "geometry/sizes/document_sizes.hpp"

#include <fmt/format.h>

#include <TCollection_HAsciiString.hxx>
#include <TDF_LabelSequence.hxx>
#include <XCAFDimTolObjects_DimensionObject.hxx>
#include <XCAFDoc_DimTolTool.hxx>
#include <XCAFDoc_Dimension.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <cmath>
#include <optional>
#include <utility>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/guard.hpp"
#include "geometry/sizes/dimension_object.hpp"
#include "geometry/tree/document_tree.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/size_words.hpp"
#include "spotblue/geometry/sizes.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

bool same(double a, double b) { return std::abs(a - b) <= kOnePlace; }

bool are_of_class(const SizeLimits& limits_there, double nominal_mm,
                  const std::string& tolerance_class) {
  try {
    const Limits made = limits(Length::mm(nominal_mm), tolerance_class);
    return same(made.lower.in_mm(), limits_there.lower_mm) &&
           same(made.upper.in_mm(), limits_there.upper_mm);
  } catch (const Error&) {
    return false;
  }
}

// Whether Open CASCADE's STEP reader may have made such deviations of the true ones: it drops the
// lower sign and takes inches, metres, centimetres and feet for mm.
bool may_come_from(const SizeLimits& there, const SizeLimits& truth) {
  for (const double unit_mm : {1.0, 25.4, 1000.0, 10.0, 304.8}) {
    if (same(std::abs(there.lower_mm) * unit_mm, std::abs(truth.lower_mm)) &&
        same(std::abs(there.upper_mm) * unit_mm, std::abs(truth.upper_mm))) {
      return true;
    }
  }
  return false;
}

// Whether the size in the document is what is left of the one in its words.
bool is_left_of(const SemanticSize& there, const SemanticSize& words) {
  const bool same_nominal =
      there.nominal_mm && words.nominal_mm && same(*there.nominal_mm, *words.nominal_mm);
  if (there.limits) {
    // Two negative deviations are read as a range from the nominal to one of them.
    const bool misread = words.deviations && words.nominal_mm &&
                         same(there.limits->lower_mm, *words.nominal_mm) &&
                         there.limits->upper_mm < there.limits->lower_mm;
    const bool of_class = words.nominal_mm && !words.tolerance_class.empty() &&
                          are_of_class(*there.limits, *words.nominal_mm, words.tolerance_class);
    return misread || of_class ||
           (words.limits && same(there.limits->lower_mm, words.limits->lower_mm) &&
            same(there.limits->upper_mm, words.limits->upper_mm));
  }
  if (!there.tolerance_class.empty()) {
    return same_nominal && there.tolerance_class == words.tolerance_class;
  }
  if (there.deviations) {
    return same_nominal && words.deviations && may_come_from(*there.deviations, *words.deviations);
  }
  return same_nominal && (needs_limits(words.tolerance_class) || words.deviations);
}

void take_words(SemanticSize words, SemanticSize& size) {
  words.characteristic = size.characteristic;
  if (!is_left_of(size, words)) {
    size.doubt =
        fmt::format("beside it stands '{}', which is another size", semantic_size_text(words));
    return;
  }
  if (size.deviations && words.deviations &&
      same(size.deviations->upper_mm, words.deviations->upper_mm)) {
    size.deviations->lower_mm =
        std::copysign(size.deviations->lower_mm, words.deviations->lower_mm);
    return;
  }
  if (!size.nominal_mm || words.deviations) {
    size.nominal_mm = words.nominal_mm;
  }
  size.deviations = words.deviations;
  size.tolerance_class = words.tolerance_class;
  if (words.deviations || !words.tolerance_class.empty()) {
    size.limits.reset();
  }
}

// What only the file knows, Open CASCADE's reader having lost it.
void doubt_what_is_lost(StatedSize& stated) {
  SemanticSize& size = stated.size;
  const bool from_file = is_step_name(size.name);
  if (!size.tolerance_class.empty() && from_file) {
    stated.remark =
        "its grade is taken as the document has it; had Open CASCADE itself written the file "
        "that it comes from, it would be two too high";
  }
  if (!size.deviations) {
    return;
  }
  SizeLimits& deviations = *size.deviations;
  if (from_file && (deviations.lower_mm != 0.0 || deviations.upper_mm != 0.0)) {
    size.doubt =
        "Open CASCADE's STEP reader has lost the sign and the unit of its deviations: take it "
        "from the file itself";
  } else if (deviations.lower_mm > 0.0 && deviations.lower_mm >= deviations.upper_mm - kNoLength) {
    deviations.lower_mm = -deviations.lower_mm;  // nothing else makes sense
  } else if (deviations.lower_mm > 0.0) {
    size.doubt = fmt::format(
        "whether its lower deviation is {0:+.6g} or {1:+.6g} mm can not be told: this Open CASCADE "
        "has "
        "both the same",
        deviations.lower_mm, -deviations.lower_mm);
  }
}

class DocumentSizeReader {
 public:
  explicit DocumentSizeReader(const TDF_Label& main)
      : tool_(XCAFDoc_DocumentTool::DimTolTool(main)) {}

  StatedSizes read(std::vector<std::string>& labels) {
    TDF_LabelSequence dimensions;
    tool_->GetDimensionLabels(dimensions);
    for (const TDF_Label& label : dimensions) {
      Handle(XCAFDoc_Dimension) dimension;
      if (label.FindAttribute(XCAFDoc_Dimension::GetID(), dimension)) {
        const std::size_t before = result_.sizes.size();
        add(label, *dimension->GetObject());
        if (result_.sizes.size() > before) {
          labels.push_back(entry_of(label));
        }
      }
    }
    return std::move(result_);
  }

 private:
  void add(const TDF_Label& label, const XCAFDimTolObjects_DimensionObject& object) {
    const DimensionKind kind = kind_of(object.GetType());
    if (kind == DimensionKind::angle) {
      ++result_.angles;
      return;
    }
    if (kind == DimensionKind::other_distance) {
      ++result_.distances;
      return;
    }
    StatedSize stated;
    stated.size = size_in(object);
    stated.is_distance = kind == DimensionKind::plain_distance;
    TDF_LabelSequence near;
    TDF_LabelSequence far;
    tool_->GetRefShapeLabel(label, near, far);
    add_faces(near, stated.faces, stated);
    add_faces(far, stated.is_distance ? stated.far_faces : stated.faces, stated);
    if (const auto words = words_in(object)) {
      take_words(*words, stated.size);
    } else {
      doubt_what_is_lost(stated);
    }
    result_.sizes.push_back(std::move(stated));
  }

  static void add_faces(const TDF_LabelSequence& labels, std::vector<TopoDS_Shape>& faces,
                        StatedSize& stated) {
    for (const TDF_Label& label : labels) {
      const TopoDS_Shape shape = XCAFDoc_ShapeTool::GetShape(label);
      if (!shape.IsNull() && shape.ShapeType() == TopAbs_FACE) {
        faces.push_back(shape);
      } else {
        ++stated.other_items;
      }
    }
  }

  Handle(XCAFDoc_DimTolTool) tool_;
  StatedSizes result_;
};

}  // namespace

DocumentSizes settled_in_document(const TDF_Label& main, const Tree& tree, const Model& model) {
  DocumentSizes result;
  // Asking for the tool would make one, and so change a document that has none.
  if (XCAFDoc_DocumentTool::CheckDimTolTool(main)) {
    StatedSizes stated = DocumentSizeReader(main).read(result.labels);
    FaceBook book(tree, model);
    result.settled = settled_sizes(std::move(stated), book, model);
  }
  return result;
}

std::vector<DocumentSize> sizes_of_document(const TDF_Label& main, const Model& model) {
  return guarded("reading the sizes of the document", [&] {
    std::vector<DocumentSize> sizes;
    if (!XCAFDoc_DocumentTool::CheckDimTolTool(main)) {
      return sizes;
    }
    const Tree tree = read_document_tree(main).tree;
    if (tree.parts.size() != model.products.size()) {
      throw Error(ErrorCode::bad_input, {}, "the document has other parts than it had",
                  "look at it again");
    }
    DocumentSizes read = settled_in_document(main, tree, model);
    for (std::size_t i = 0; i < read.settled.sizes.size(); ++i) {
      sizes.push_back({read.labels[read.settled.from[i]], std::move(read.settled.sizes[i])});
    }
    return sizes;
  });
}

}  // namespace spotblue
