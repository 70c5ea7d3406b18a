#include "geometry/faces/product_notes.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cmath>
#include <string>
#include <vector>

#include "geometry/faces/product_features.hpp"

namespace spotblue {
namespace {

constexpr double kWellKnown = 1e-5;  // of the volume: what a table's digits show
// mm: sound exporters leave 1.1e-3 at most on the open models; twice that is a step of a tight fit.
constexpr double kEdgesOff = 2e-3;
// mm: exporters leave 1.9e-2 at most on the open models. Where an edge ends says how long a stretch
// is, not what its diameter or a gap is.
constexpr double kEndsOff = 5e-2;

std::string solids_in_words(int some, int all) {
  return all == 1 ? "its solid" : fmt::format("{} of its {} solids", some, all);
}

}  // namespace

std::string unsound(const Product& product, const Remarks& remarks) {
  std::vector<std::string> why;
  if (remarks.bare_solids > 0) {
    why.push_back(fmt::format("{} has no faces: nothing is said of it",
                              solids_in_words(remarks.bare_solids, product.solids)));
  } else if (!product.closed) {
    why.emplace_back(
        "its solid is not closed: its volume, and where it overlaps others, are not to be relied "
        "on");
  }
  if (remarks.flat_solids > 0) {
    why.push_back(fmt::format("the faces of {} enclose no volume",
                              solids_in_words(remarks.flat_solids, product.solids)));
  }
  if (remarks.stray_voids > 0) {
    why.emplace_back("a void reaches out of the shell that should enclose it");
  }
  if (remarks.ends_off > kEndsOff) {
    why.push_back(fmt::format(
        "edges end up to {:.2g} mm off their own corners: which of the two is meant is not known",
        remarks.ends_off));
  }
  if (remarks.edges_off > kEdgesOff) {
    why.push_back(fmt::format(
        "faces lie up to {:.2g} mm off their own edges: which of the two is meant is not known",
        remarks.edges_off));
  }
  return fmt::format("{}", fmt::join(why, "; "));
}

std::vector<Note> notes_on(const Product& product, const Remarks& remarks) {
  std::vector<Note> notes;
  if (!product.unsound.empty()) {
    notes.push_back({product.id, product.unsound});
  }
  if (remarks.turned_loops > 0) {
    notes.push_back(
        {product.id, fmt::format("invalid in the file: {} written the wrong way round, put right "
                                 "by the faces beside",
                                 remarks.turned_loops == 1 ? "a face's loop is"
                                                           : fmt::format("{} loops of faces are",
                                                                         remarks.turned_loops))});
  }
  if (remarks.threads > 0) {
    notes.push_back(
        {product.id, fmt::format("{} turn by turn: compared as {} of the crests' size",
                                 remarks.threads == 1 ? "its thread is modelled"
                                                      : fmt::format("{} threads of it are modelled",
                                                                    remarks.threads),
                                 remarks.threads == 1 ? "a plain cylinder" : "plain cylinders")});
  }
  if (remarks.free_form_faces > 0) {
    notes.push_back(
        {product.id, fmt::format("{} free-form, not recognised as plane, cylinder or cone: no size "
                                 "is measured on {}",
                                 remarks.free_form_faces == 1
                                     ? "1 face is"
                                     : fmt::format("{} faces are", remarks.free_form_faces),
                                 remarks.free_form_faces == 1 ? "it" : "them")});
  }
  if (product.volume_error > kWellKnown * std::abs(product.volume)) {
    notes.push_back(
        {product.id, fmt::format("the volume is known within {:.2g} mm3 only ({:.2g} %): edges lie "
                                 "off their surfaces, or a face could not be followed",
                                 product.volume_error,
                                 100.0 * product.volume_error / std::abs(product.volume))});
  }
  return notes;
}

}  // namespace spotblue
