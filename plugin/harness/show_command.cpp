// Seats and fouls in the harness's viewer: by colour and by label.

#include <fmt/format.h>

#include <AIS_ColoredShape.hxx>
#include <AIS_InteractiveContext.hxx>
#include <AIS_TextLabel.hxx>
#include <Draw.hxx>
#include <Draw_Interpretor.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <ViewerTest.hxx>
#include <nlohmann/json.hpp>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/session.hpp"
#include "plugin/harness/show_labels.hpp"
#include "plugin/subject/marks.hpp"
#include "spotblue/geometry/feature_faces.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

void take_away(std::vector<std::string>& displayed) {
  for (const std::string& name : displayed) {
    Draw::GetInterpretor().Eval(fmt::format("catch {{vremove {{{}}}}}", name).c_str());
  }
  displayed.clear();
}

void display(Session& session, const std::string& name,
             const Handle(AIS_InteractiveObject) & object) {
  ViewerTest::Display(name.c_str(), object, Standard_False);
  session.displayed.push_back(name);
}

std::optional<Mark> mark_of(const Marks& marks, const Product& product, ProductId number,
                            const FeatureFace& face) {
  std::optional<Mark> worst;
  const auto take = [&](FeatureKind kind, std::size_t index) {
    const auto found = marks.features.find({number, kind, index});
    if (found != marks.features.end()) {
      worst = std::max(worst.value_or(found->second), found->second);
    }
  };
  take(face.kind, face.index);
  for (std::size_t i = 0; i < product.widths.size(); ++i) {
    if (face.kind == FeatureKind::plane &&
        (product.widths[i].first == face.index || product.widths[i].second == face.index)) {
      take(FeatureKind::width, i);
    }
  }
  return worst;
}

std::size_t show_part(Session& session, const Subject& subject, OccurrenceId occurrence,
                      const Marks& marks) {
  const Occurrence& place = subject.result.look.model.occurrences[occurrence];
  const Product& product = subject.result.look.model.products[place.product];
  TopTools_IndexedMapOfShape faces;
  TopExp::MapShapes(subject.placed[occurrence], TopAbs_FACE, faces);
  const Handle(AIS_ColoredShape) shown = new AIS_ColoredShape(subject.placed[occurrence]);
  const auto part = marks.parts.find(place.product);
  shown->SetColor(part == marks.parts.end() ? Quantity_Color(Quantity_NOC_GRAY80)
                                            : mark_colour(part->second));
  std::size_t coloured = 0;
  for (const FeatureFace& face : feature_faces(subject.product_shapes[place.product], product)) {
    if (const auto mark = mark_of(marks, product, place.product, face)) {
      shown->SetCustomColor(faces(static_cast<int>(face.face)), mark_colour(*mark));
      ++coloured;
    }
  }
  display(session, "spotblue " + place.id, shown);
  return coloured;
}

void show_label(Session& session, std::size_t number, const SeatLabel& seat) {
  const Handle(AIS_TextLabel) label = new AIS_TextLabel;
  label->SetText(TCollection_ExtendedString(seat.text.c_str(), Standard_True));
  label->SetPosition(gp_Pnt(seat.at.x, seat.at.y, seat.at.z));
  label->SetColor(mark_colour(seat.mark));
  label->SetZLayer(Graphic3d_ZLayerId_Topmost);  // else the parts hide it
  display(session, fmt::format("spotblue label {}", number), label);
}

}  // namespace

Json show_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 1);
  const Subject& found = session.subject(arguments.words()[0]);
  if (ViewerTest::GetAISContext().IsNull()) {
    throw mistake("", "no viewer is open", "open one with vinit");
  }
  take_away(session.displayed);
  std::size_t faces = 0;
  std::size_t labels = 0;
  if (!arguments.has("-off")) {
    const Marks marks = marks_of(found);
    for (OccurrenceId i; i < found.placed.size(); ++i) {
      faces += show_part(session, found, i, marks);
    }
    for (const SeatLabel& label : labels_of(found, marks)) {
      show_label(session, ++labels, label);
    }
  }
  ViewerTest::RedrawAllViews();
  return {{"parts", arguments.has("-off") ? 0 : found.placed.size()},
          {"faces", faces},
          {"labels", labels}};
}

}  // namespace spotblue::plugin
