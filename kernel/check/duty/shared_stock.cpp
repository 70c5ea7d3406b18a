#include "check/duty/shared_stock.hpp"

#include <string>

#include "check/fits/fit_verdict.hpp"
#include "group/stock/shared_piece.hpp"
#include "group/words/said_stock.hpp"

namespace spotblue {
namespace {

Verdict verdict_on_shared(const DeclaredJob& declared, const SharedPiece& piece,
                          const Stock& stock) {
  const auto form = word_of(stock.form);
  if (!piece.too_small.empty()) {
    Saying by;
    for (const TooSmallFor& one : piece.too_small) {
      by += say(said::kStockShortFor, declared.names.reference(one.part), one.margin.size,
                Length::mm(-one.margin.margin_mm));
    }
    return {Outcome::nonconforming, say(said::kStockTooSmall, form, by) + said::kFindLargerStock};
  }
  if (!piece.left_over_mm) {
    return {Outcome::undecided, said::kStockLength};
  }
  const Length left = Length::mm(*piece.left_over_mm);
  if (left < Length()) {
    return stock.form == StockForm::plate
               ? Verdict{Outcome::undecided, say(said::kStockRowTooShort, -left)}
               : Verdict{Outcome::nonconforming, say(said::kStockTooShort, form, -left)};
  }
  if (!piece.not_whole.empty()) {
    return {Outcome::undecided, said::kFreeFormLeftOut};
  }
  return {Outcome::conforming, say(said::kStockLeft, form, left)};
}

}  // namespace

Finding judge_shared_stock(const WorkedGroup& worked, const SharedStock& stock) {
  const DeclaredJob& declared = worked.declared;
  const SharedPiece piece = shared_piece({declared, worked.surfaces}, stock);
  const Length cleaning = declared.job->conditions.cleaning;
  Finding finding;
  finding.kind = "stock";
  for (const OccurrenceId part : piece.parts) {
    finding.about.push_back(declared.names.reference(part));
  }
  finding.wanted = {{"stock", std::string(word_of(stock.piece.form))},
                    {"cleaning", measure(cleaning)},
                    {"parting", measure(stock.parting)},
                    {"stub", measure(stock.stub)}};
  finding.found = {{"length_needed", millimetres(piece.needs_mm)}};
  if (piece.left_over_mm) {
    finding.found.push_back({"left_over", millimetres(*piece.left_over_mm)});
    finding.margin = {{"length", millimetres(*piece.left_over_mm)}};
  }
  for (const TooSmallFor& one : piece.too_small) {
    finding.margin.push_back({one.margin.size, millimetres(one.margin.margin_mm)});
  }
  const Verdict verdict = verdict_on_shared(declared, piece, stock.piece);
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice;
  finding.basis =
      say(said::kOneBehindOther, cleaning) + say(said::kCleaning, DrawnSize{Conditions{}.cleaning});
  return finding;
}

}  // namespace spotblue
