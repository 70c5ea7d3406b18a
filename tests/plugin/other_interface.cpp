// A service of an interface that no host was built for.

#include "plugin/service.hpp"

namespace {

using namespace spotblue::host;

class LaterService final : public Service {
 public:
  [[nodiscard]] int interface_version() const noexcept override { return kInterface + 1; }
  [[nodiscard]] std::string version() const override { return "later"; }
  LookResult look_at_document(const Handle(TDocStd_Document) & /*document*/,
                              const Bounds& /*bounds*/) override {
    return {};
  }
  LookResult look_at_shapes(const std::vector<Part>& /*parts*/, const Bounds& /*bounds*/) override {
    return {};
  }
  CheckResult check_document(const Handle(TDocStd_Document) & /*document*/,
                             const CheckWishes& /*wishes*/) override {
    return {};
  }
  CheckResult check_shapes(const std::vector<Part>& /*parts*/, const std::string& /*job_file*/,
                           const Bounds& /*bounds*/) override {
    return {};
  }
  std::string kept_findings(const Handle(TDocStd_Document) & /*document*/,
                            std::string& /*trouble*/) override {
    return {};
  }
  std::size_t clear_marks(const Handle(TDocStd_Document) & /*document*/,
                          std::string& /*trouble*/) override {
    return 0;
  }
};

}  // namespace

extern "C" Standard_Transient* PLUGINFACTORY(const Standard_GUID& /*guid*/) {
  static const Handle(Standard_Transient) service = new LaterService;
  return service.get();
}
