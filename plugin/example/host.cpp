// A program on Open CASCADE that knows nothing of spotblue but one header: it reads a STEP file
// into a document of its own and asks what fits what.  example_host FILE.step JOB.toml OUT.xbf

#include <BinXCAFDrivers.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <TDocStd_Application.hxx>
#include <iostream>
#include <spotblue/plugin/service.hpp>

int main(int argc, char** argv) {
  if (argc != 4) {
    std::cerr << "example_host FILE.step JOB.toml OUT.xbf\n";
    return 2;
  }
  const Handle(TDocStd_Application) application = new TDocStd_Application;
  BinXCAFDrivers::DefineFormat(application);
  Handle(TDocStd_Document) document;
  application->NewDocument("BinXCAF", document);
  STEPCAFControl_Reader reader;
  reader.SetNameMode(true);
  reader.SetGDTMode(true);
  if (reader.ReadFile(argv[1]) != IFSelect_RetDone || !reader.Transfer(document)) {
    std::cerr << "not read: " << argv[1] << "\n";
    return 2;
  }

  const Handle(spotblue::host::Service) service = spotblue::host::load_service();
  if (service.IsNull()) {
    std::cerr << "spotblue's service is not there\n";
    return 2;
  }
  const spotblue::host::LookResult look = service->look_at_document(document);
  const spotblue::host::CheckResult check =
      service->check_document(document, {argv[2], true, true});
  if (!look.trouble.empty() || !check.trouble.empty()) {
    std::cerr << look.trouble << check.trouble << "\n";
    return 2;
  }
  std::cout << service->version() << ": " << look.seats.size() << " seats, " << look.fouls.size()
            << " fouls; " << check.nonconforming << " nonconforming, " << check.undecided
            << " undecided, " << check.conforming << " conforming\n";
  return application->SaveAs(document, argv[3]) == PCDM_SS_OK ? 0 : 2;
}
