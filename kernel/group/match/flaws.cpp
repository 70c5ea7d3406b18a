#include "group/match/flaws.hpp"

#include <map>
#include <string_view>

namespace spotblue {
namespace {

// "Wheel" of "solid #12 of product 'Wheel'"; names may hold such marks themselves.
std::string_view quoted_name(std::string_view about) {
  const std::size_t open = about.find('\'');
  const std::size_t close = about.rfind('\'');
  return open < close && close != std::string_view::npos ? about.substr(open + 1, close - open - 1)
                                                         : std::string_view();
}

}  // namespace

std::vector<std::string> flaws_of(const Model& model) {
  std::map<std::string_view, const Note*> lost;
  for (const Note& note : model.not_compared) {
    lost.try_emplace(quoted_name(note.about), &note);
  }
  lost.erase("");
  std::vector<std::string> flaws(model.products.size());
  for (ProductId i; i < model.products.size(); ++i) {
    const Product& product = model.products[i];
    std::string& flaw = flaws[i];
    flaw = product.unsound;
    for (const std::string_view name :
         {std::string_view(product.name), std::string_view(product.part)}) {
      const auto note = flaw.empty() ? lost.find(name) : lost.end();
      if (note != lost.end()) {
        flaw = note->second->about + " " + note->second->text;
      }
    }
  }
  return flaws;
}

}  // namespace spotblue
