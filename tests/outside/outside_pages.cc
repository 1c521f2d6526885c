#include "outside/outside_pages.h"

#include "outside/kicad_sheet.h"

namespace benchleaf::outside {

using scanmaker::Lettering;

const std::vector<OutsidePage>& OutsidePages() {
  static const std::vector<OutsidePage> kPages = {
      {Half::kDevelopment, "complex_hierarchy/ampli_ht.kicad_sch", Lettering::kDuplex, 101, 30},
      {Half::kDevelopment, "complex_hierarchy/complex_hierarchy.kicad_sch", Lettering::kHand, 102, 10},
      {Half::kDevelopment, "pic_programmer/pic_programmer.kicad_sch", Lettering::kSimplex, 103, 58},
      {Half::kDevelopment, "simulation/v_i_sources/v_i_sources.kicad_sch", Lettering::kHand, 104, 36},
      {Half::kDevelopment, "simulation/laser_driver/laser_driver.kicad_sch", Lettering::kDrafting, 105, 13},
      {Half::kDevelopment, "video/modul.kicad_sch", Lettering::kDrafting, 106, 39},
      {Half::kHeldOut, "ecc83/ecc83-pp_v2.kicad_sch", Lettering::kHand, 201, 17},
      {Half::kHeldOut, "simulation/pspice/pspice.kicad_sch", Lettering::kSimplex, 202, 23},
      {Half::kHeldOut, "sonde xilinx/sonde xilinx.kicad_sch", Lettering::kDrafting, 203, 31},
      {Half::kHeldOut, "simulation/sallen_key/sallen_key.kicad_sch", Lettering::kDuplex, 204, 8},
      {Half::kHeldOut, "kit-dev-coldfire-xilinx_5213/kit-dev-coldfire-xilinx_5213.kicad_sch", Lettering::kDuplex, 205,
       59},
      {Half::kHeldOut, "kit-dev-coldfire-xilinx_5213/in_out_conn.kicad_sch", Lettering::kHand, 206, 58},
      {Half::kPractice, "video/graphic.kicad_sch", Lettering::kHand, 301, 34},
      {Half::kPractice, "interf_u/interf_u.kicad_sch", Lettering::kDuplex, 302, 24},
      {Half::kPractice, "test_xil_95108/carte_test.kicad_sch", Lettering::kDrafting, 303, 47},
      {Half::kPractice, "video/pal-ntsc.kicad_sch", Lettering::kSimplex, 304, 36},
      {Half::kPractice, "stickhub/StickHub.kicad_sch", Lettering::kHand, 305, 90},
      {Half::kPractice, "simulation/rectifier/rectifier.kicad_sch", Lettering::kDuplex, 306, 5},
  };
  return kPages;
}

std::filesystem::path KicadDemos() { return "/usr/share/kicad/demos"; }

scanmaker::MadePage Draw(const OutsidePage& page) {
  return DrawKicadSheet(KicadDemos() / page.sheet, page.lettering, page.seed);
}

}  // namespace benchleaf::outside
