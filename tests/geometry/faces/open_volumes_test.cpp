// Volumes of the open models' solids against an adaptive integration that nobody here wrote: Open
// CASCADE's Gauss-Kronrod integration over its own mended faces, with its error.

#include <gtest/gtest.h>

#include <BRepBndLib.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <BRepGProp_Domain.hxx>
#include <BRepGProp_Face.hxx>
#include <BRepGProp_VinertGK.hxx>
#include <BRep_Builder.hxx>
#include <BRep_Tool.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <STEPControl_Reader.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Compound.hxx>
#include <TopoDS_Edge.hxx>
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <sstream>
#include <string>
#include <vector>

#include "geometry/occt/contained.hpp"
#include "geometry/read/written_step.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/open_model.hpp"
#include "support/step_out.hpp"

namespace spotblue::test::open_volumes_test {

namespace fs = std::filesystem;

struct Measured {
  double volume = 0.0, error = 0.0;  // mm3
};

std::vector<TopoDS_Shape> solids_of(const fs::path& file) {
  silence_open_cascade();
  STEPControl_Reader reader;
  std::vector<TopoDS_Shape> solids;
  if (reader.ReadFile(file.c_str()) != IFSelect_RetDone) {
    return solids;
  }
  reader.TransferRoots();
  TopTools_IndexedMapOfShape all;
  TopExp::MapShapes(reader.OneShape(), TopAbs_SOLID, all);
  for (int i = 1; i <= all.Extent(); ++i) {
    const TopoDS_Shape here = all(i).Located(TopLoc_Location());  // once, however often placed
    if (std::none_of(solids.begin(), solids.end(),
                     [&](const TopoDS_Shape& other) { return other.IsPartner(here); })) {
      solids.push_back(here);
    }
  }
  return solids;
}

// About a point: what edges that do not meet leave open depends on where it stands.
Measured integrated_about(const TopoDS_Shape& solid, const gp_Pnt& about) {
  constexpr double kShare = 1e-7;  // of each face
  Measured sum;
  for (TopExp_Explorer it(solid, TopAbs_FACE); it.More(); it.Next()) {
    BRepGProp_Face face(TopoDS::Face(it.Current()));
    BRepGProp_Domain domain(TopoDS::Face(it.Current()));
    BRepGProp_VinertGK share;
    share.SetLocation(about);
    const double reached = share.Perform(face, domain, kShare, Standard_False, Standard_False);
    sum.volume += share.Mass();
    sum.error += std::abs(share.Mass()) * std::max(kShare, std::abs(reached));
  }
  return sum;
}

// What curves in surface parameters add that lie off their edge by its tolerance: Open CASCADE
// takes its boundaries from them.
double strips(const TopoDS_Shape& solid, const gp_Pnt& about) {
  double sum = 0.0;
  for (TopExp_Explorer it(solid, TopAbs_EDGE); it.More(); it.Next()) {
    const TopoDS_Edge edge = TopoDS::Edge(it.Current());
    if (!BRep_Tool::Degenerated(edge)) {
      GProp_GProps length;
      BRepGProp::LinearProperties(edge, length);
      sum +=
          BRep_Tool::Tolerance(edge) * length.Mass() * about.Distance(length.CentreOfMass()) / 3.0;
    }
  }
  return sum;
}

Measured integrated(const TopoDS_Shape& solid) {
  Bnd_Box box;
  BRepBndLib::Add(solid, box);
  const gp_Pnt low = box.CornerMin();
  const gp_Pnt high = box.CornerMax();
  const gp_Pnt middle(0.5 * (low.XYZ() + high.XYZ()));
  const Measured inside = integrated_about(solid, middle);
  const Measured outside = integrated_about(solid, high);
  return {std::abs(inside.volume), inside.error + outside.error +
                                       std::abs(inside.volume - outside.volume) +
                                       strips(solid, middle)};
}

// All of them, and written again by Open CASCADE, take ten minutes: on demand.
bool all_wanted() { return std::getenv("SPOTBLUE_ALL_VOLUMES") != nullptr; }

// Each sound solid of a file, in a child: Open CASCADE's reader may crash. Writes them to `with`
// and `without` (curves in surface parameters) too.
std::vector<Measured> by_the_kernel(const fs::path& file, const fs::path& with,
                                    const fs::path& without) {
  ReadLimits limits;
  limits.seconds = 300.0;
  const Contained run = run_contained(
      [&] {
        std::ostringstream found;
        found.precision(17);
        BRep_Builder builder;
        TopoDS_Compound all;
        builder.MakeCompound(all);
        for (const TopoDS_Shape& solid : solids_of(file)) {
          if (BRepCheck_Analyzer(solid).IsValid()) {
            const Measured one = integrated(solid);
            found << one.volume << ' ' << one.error << '\n';
            builder.Add(all, solid);
          }
        }
        if (!all_wanted()) {
          return found.str();
        }
        const std::vector<Node> nodes{{"Part", all, {}}};
        write_step(nodes, Schema::ap214, FileUnit::mm, with, SurfaceCurves::written);
        write_step(nodes, Schema::ap214, FileUnit::mm, without, SurfaceCurves::left_out);
        return found.str();
      },
      limits);
  std::vector<Measured> solids;
  std::istringstream bytes(run.bytes);
  for (Measured one; bytes >> one.volume >> one.error;) {
    solids.push_back(one);
  }
  return solids;
}

// The solids of the first that none of the second agrees with.
std::string not_met(const std::vector<Measured>& truth, std::vector<Measured> ours) {
  std::ostringstream missing;
  for (const Measured& one : truth) {
    const auto like = std::find_if(ours.begin(), ours.end(), [&](const Measured& other) {
      return std::abs(one.volume - other.volume) <= one.error + other.error;
    });
    if (like == ours.end()) {
      missing << one.volume << " +- " << one.error << ", nearest of ours ";
      const auto nearest =
          std::min_element(ours.begin(), ours.end(), [&](const Measured& a, const Measured& b) {
            return std::abs(a.volume - one.volume) < std::abs(b.volume - one.volume);
          });
      if (nearest != ours.end()) {
        missing << nearest->volume << " +- " << nearest->error;
      }
      missing << "; ";
    } else {
      ours.erase(like);
    }
  }
  return missing.str();
}

std::vector<Measured> by_us(const fs::path& file) {
  std::vector<Measured> bodies;
  for (const Product& product : read_step(file, {}, Completeness::accept_partial).products) {
    bodies.push_back({product.volume, product.volume_error});
  }
  return bodies;
}

class OpenVolumes : public testing::TestWithParam<const char*> {};

TEST_P(OpenVolumes, AreWithinTheirStatedErrorOfAnIndependentIntegration) {
  const fs::path folder = test::open_model(GetParam());
  SKIP_WITHOUT_OPEN_MODEL(folder);
  const Folder own;
  int solids = 0;
  for (const auto& entry : fs::directory_iterator(folder)) {
    const fs::path& file = entry.path();
    constexpr std::uintmax_t kQuick = 700'000;  // bytes
    if ((file.extension() != ".step" && file.extension() != ".stp") ||
        (!all_wanted() && fs::file_size(file) > kQuick)) {
      continue;
    }
    const fs::path with = own.path() / "with.step";
    const fs::path without = own.path() / "without.step";
    fs::remove(with);
    fs::remove(without);
    const std::vector<Measured> truth = by_the_kernel(file, with, without);
    if (truth.empty()) {
      continue;  // nothing sound in it, or nothing that Open CASCADE reads
    }
    solids += static_cast<int>(truth.size());
    for (const fs::path& one : {file, with, without}) {
      if (!fs::exists(one)) {
        continue;
      }
      try {
        EXPECT_EQ(not_met(truth, by_us(one)), "") << file.filename() << ' ' << one.filename();
      } catch (const Error& problem) {
        EXPECT_EQ(one, file) << file.filename() << ' ' << problem.what();
      }
    }
  }
  EXPECT_GT(solids, 0);
}

INSTANTIATE_TEST_SUITE_P(Folders, OpenVolumes,
                         testing::Values("units", "mating", "parts", "pmi", "dirty"));

}  // namespace spotblue::test::open_volumes_test
