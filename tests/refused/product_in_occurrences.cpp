#include "spotblue/geometry/model.hpp"

double volume_of(const spotblue::Model& model, spotblue::ProductId wheel) {
#ifdef MISTAKE
  return model.occurrences[wheel].frame.rows[0][0];
#else
  return model.products[wheel].volume;
#endif
}
