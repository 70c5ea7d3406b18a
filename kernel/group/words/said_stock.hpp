#pragma once
// Whether a part comes out of the stock that lies there.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kStockTooSmall{"stock-too-small", "the {} is too small: {}"};
inline constexpr Said kStockShort{"stock-short", "{} by {}"};
inline constexpr Said kFindLargerStock{"stock-find-larger",
                                       "find larger stock, or clean less off it"};
inline constexpr Said kPlateSizes{
    "stock-plate-sizes",
    "it fits as far as its sizes are given: say length and width of the plate"};
inline constexpr Said kStockLength{"stock-length", "it fits across: say how long the stock is"};
inline constexpr Said kFreeFormLeftOut{
    "stock-free-form",
    "the part has free-form faces that were left out: measure its greatest size"};
inline constexpr Said kStockFits{"stock-fits", "comes out of the {} with {} to spare"};

inline constexpr Said kStockShortFor{"stock-short-for", "{}: {} by {}"};
inline constexpr Said kStockTooShort{"stock-too-short",
                                     "the {} is too short for all of them by {}: leave one out, or "
                                     "find a longer one"};
inline constexpr Said kStockRowTooShort{
    "stock-row-too-short",
    "in one row the plate is too short by {}: lay the parts out on it side by side"};
inline constexpr Said kStockLeft{"stock-left", "all come out of the {}, {} of its length are left"};
inline constexpr Said kOneBehindOther{
    "stock-one-behind-other",
    "one behind the other at the greatest sizes that they may have, {} cleaned off each side"};
inline constexpr Said kAboutItsAxis{
    "stock-about-axis",
    "greatest sizes about its axis that it may have, a bore that is open right through at its "
    "least, {} cleaned off each side of the stock"};
inline constexpr Said kBoxRoundIt{
    "stock-box", "box round the part as modelled, {} cleaned off each side of the stock"};
inline constexpr Said kCleaning{
    "stock-cleaning",
    "the job says how much is cleaned off, {} by default: common practice, no source"};
inline constexpr Said kNoSaw{"stock-no-saw", "no allowance for the saw or for holding it"};

}  // namespace spotblue::said
