#include <fmt/format.h>

#include <cmath>

#include "geometry/product_features.hpp"

namespace spotblue {
namespace {

constexpr double kWellKnown = 1e-5;  // of the volume: what a table's digits show

}  // namespace

std::vector<Note> notes_on(const Product& product, const Remarks& remarks) {
  std::vector<Note> notes;
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
