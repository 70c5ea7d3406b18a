#include "check/duty/stock_findings.hpp"

#include <optional>
#include <string>
#include <vector>

#include "check/duty/shared_stock.hpp"
#include "check/fits/fit_verdict.hpp"
#include "group/stock/shared_piece.hpp"
#include "group/words/said_stock.hpp"
#include "spotblue/mechanics/stock.hpp"

namespace spotblue {
namespace {

StockCheck checked(const FlatSidedPart& flat, const std::optional<TurnedPart>& turned,
                   const Stock& stock, double cleaning_mm) {
  if (stock.form == StockForm::plate) {
    return turned ? check_stock(turned->size, block_stock(stock), cleaning_mm)
                  : check_stock(flat, block_stock(stock), cleaning_mm);
  }
  return turned ? check_stock(turned->size, round_stock(stock), cleaning_mm)
                : check_stock(flat, round_stock(stock), cleaning_mm);
}

Verdict verdict_on(const StockCheck& check, bool measured_whole, const Stock& stock) {
  if (!check.fits()) {
    Saying by;
    for (const StockMargin& margin : check.margins) {
      if (margin.margin_mm < 0.0) {
        by += say(said::kStockShort, margin.size, Length::mm(-margin.margin_mm));
      }
    }
    return {Outcome::nonconforming,
            say(said::kStockTooSmall, word_of(stock.form), by) + said::kFindLargerStock};
  }
  const bool plate = stock.form == StockForm::plate;
  if (!stock.length || (plate && !stock.width)) {
    return {Outcome::undecided, plate ? said::kPlateSizes : said::kStockLength};
  }
  if (!measured_whole) {
    return {Outcome::undecided, said::kFreeFormLeftOut};
  }
  return {Outcome::conforming,
          say(said::kStockFits, word_of(stock.form), Length::mm(check.least_margin_mm()))};
}

Finding judge_stock(const WorkedGroup& worked, const JobPart& part) {
  const DeclaredJob& declared = worked.declared;
  const Model& model = declared.look->model;
  const NamedPart named = declared.names.part(part.part, {"parts", "part", part.line});
  const Product& product =
      model.products.at(model.occurrences.at(named.occurrences.front()).product);
  const Stock& stock = *part.stock;
  const double cleaning = declared.job->conditions.cleaning.in_mm();
  const std::optional<TurnedPart> turned =
      turned_part({declared, worked.surfaces}, named.occurrences.front());
  const FlatSidedPart flat = flat_sided(declared, named.occurrences.front());
  const StockCheck check = checked(flat, turned, stock, cleaning);
  Finding finding;
  finding.kind = "stock";
  finding.about = {{part.part, named.occurrences.front()}};
  if (turned) {
    finding.found = {{"outside", millimetres(turned->size.outside_mm)},
                     {"length", millimetres(turned->size.length_mm)}};
    if (turned->size.bore_mm > 0.0) {
      finding.found.push_back({"bore", millimetres(turned->size.bore_mm)});
    }
  } else {
    finding.found = {{"box_x", millimetres(flat.length_mm)},
                     {"box_y", millimetres(flat.width_mm)},
                     {"box_z", millimetres(flat.thickness_mm)}};
  }
  if (check.volume_mm3 && product.volume > 0.0 && *check.volume_mm3 > product.volume) {
    finding.found.push_back({"removed", cubic_millimetres(*check.volume_mm3 - product.volume)});
    finding.found.push_back(
        {"removed", percent(100.0 * (1.0 - product.volume / *check.volume_mm3))});
  }
  finding.wanted = {{"stock", std::string(word_of(stock.form))},
                    {"cleaning", millimetres(cleaning)}};
  for (const StockMargin& margin : check.margins) {
    finding.margin.push_back({margin.size, millimetres(margin.margin_mm)});
  }
  const Verdict verdict = verdict_on(check, !turned || turned->measured_whole, stock);
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice;
  finding.basis = say(turned ? said::kAboutItsAxis : said::kBoxRoundIt, Length::mm(cleaning)) +
                  say(said::kCleaning, DrawnSize{Conditions{}.cleaning}) + said::kNoSaw;
  return finding;
}

}  // namespace

std::vector<Finding> stock_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  for (const JobPart& part : declared.job->parts) {
    if (part.stock && part.state == PartState::to_make) {
      findings.push_back(judge_stock(worked, part));
    }
  }
  for (const SharedStock& shared : declared.job->stock) {
    findings.push_back(judge_shared_stock(worked, shared));
  }
  return findings;
}

}  // namespace spotblue
