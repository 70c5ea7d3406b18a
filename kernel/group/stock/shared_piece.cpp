#include "group/stock/shared_piece.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace spotblue {
namespace {

std::optional<double> in_mm(const std::optional<Length>& length) {
  return length ? std::optional(length->in_mm()) : std::nullopt;
}

// A part in a row: what it takes along, and how it lies across.
struct InRow {
  double along_mm = 0.0;
  StockCheck across;
};

InRow in_bar(const std::optional<TurnedPart>& turned, const FlatSidedPart& flat,
             const RoundStock& bar, double cleaning) {
  RoundStock endless = bar;
  endless.length_mm.reset();
  const double length = turned ? turned->size.length_mm
                               : std::max({flat.length_mm, flat.width_mm, flat.thickness_mm});
  return {length + 2.0 * cleaning, turned ? check_stock(turned->size, endless, cleaning)
                                          : check_stock(flat, endless, cleaning)};
}

// With the side along the row that takes least of those that let the others lie across.
InRow in_plate(const std::optional<TurnedPart>& turned, const FlatSidedPart& flat,
               const BlockStock& plate, double cleaning) {
  const std::array<double, 3> sizes =
      turned ? std::array<double, 3>{turned->size.outside_mm, turned->size.outside_mm,
                                     turned->size.length_mm}
             : std::array<double, 3>{flat.length_mm, flat.width_mm, flat.thickness_mm};
  constexpr double kThin = 1e-9;  // mm: the side along counts apart
  std::optional<InRow> best;
  for (std::size_t along = 0; along < 3; ++along) {
    BlockStock across = plate;
    across.length_mm = kThin + 2.0 * cleaning;
    const InRow row{
        sizes[along] + 2.0 * cleaning,
        check_stock(FlatSidedPart{kThin, sizes[(along + 1) % 3], sizes[(along + 2) % 3]}, across,
                    cleaning)};
    const auto key = [](const InRow& one) {
      return one.across.fits() ? -one.along_mm
                               : one.across.least_margin_mm() - std::numeric_limits<float>::max();
    };
    if (!best || key(row) > key(*best)) {
      best = row;
    }
  }
  return *best;
}

}  // namespace

FlatSidedPart flat_sided(const DeclaredJob& declared, OccurrenceId part) {
  const Model& model = declared.look->model;
  const Box& box = model.products.at(model.occurrences.at(part).product).box;
  const Point size = box.high - box.low;
  return {size.x, size.y, size.z};
}

RoundStock round_stock(const Stock& stock) {
  return {stock.diameter.value_or(Length()).in_mm(),
          stock.inner_diameter.value_or(Length()).in_mm(), in_mm(stock.length)};
}

BlockStock block_stock(const Stock& stock) {
  return {in_mm(stock.length), in_mm(stock.width), in_mm(stock.thickness)};
}

SharedPiece shared_piece(const WorkedSizes& sizes, const SharedStock& stock) {
  const DeclaredJob& declared = sizes.declared;
  const double cleaning = declared.job->conditions.cleaning.in_mm();
  SharedPiece piece;
  std::vector<double> lengths;
  for (const std::string& name : stock.parts) {
    const OccurrenceId part =
        declared.names.part(name, {"stock", "parts", stock.line}).occurrences.front();
    const auto turned = turned_part(sizes, part);
    const FlatSidedPart flat = flat_sided(declared, part);
    const InRow row = stock.piece.form == StockForm::plate
                          ? in_plate(turned, flat, block_stock(stock.piece), cleaning)
                          : in_bar(turned, flat, round_stock(stock.piece), cleaning);
    piece.parts.push_back(part);
    lengths.push_back(row.along_mm);
    for (const StockMargin& margin : row.across.margins) {
      if (margin.margin_mm < 0.0) {
        piece.too_small.push_back({part, margin});
      }
    }
    if (turned && !turned->measured_whole) {
      piece.not_whole.push_back(part);
    }
  }
  const double parting = stock.parting.in_mm();
  const double stub = stock.stub.in_mm();
  constexpr double kAny_mm = 1.0;
  piece.needs_mm = kAny_mm - left_over_mm(kAny_mm, lengths, parting, stub);
  if (stock.piece.length) {
    piece.left_over_mm = left_over_mm(stock.piece.length->in_mm(), lengths, parting, stub);
  }
  return piece;
}

}  // namespace spotblue
