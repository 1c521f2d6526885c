// Fonts that only training draws with: real pages are lettered in none that the reader could have met, so it meets
// many.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_FURTHER_FONTS_H_
#define BENCHLEAF_TESTS_READER_TRAINING_FURTHER_FONTS_H_

#include "scan-maker/lettering.h"

#include <array>

namespace benchleaf::training {

// None has the outlines of a lettering that is kept from training (kUnmetLetterings, kDuplex); each has all letters and
// figures, figures as high as capitals.
inline constexpr std::array kFurtherFonts = [] {
  using scanmaker::FontFile;
  return std::array{
      FontFile{"truetype/adf/SwitzeraADF-Regular.otf", "fonts-adf-switzera"},
      FontFile{"truetype/adf/SwitzeraADF-Cond.otf", "fonts-adf-switzera"},
      FontFile{"truetype/adf/SwitzeraADF-Ext.otf", "fonts-adf-switzera"},
      FontFile{"truetype/adf/SwitzeraADF-Medium.otf", "fonts-adf-switzera"},
      FontFile{"truetype/adf/UniversalisADFStd-Regular.otf", "fonts-adf-universalis"},
      FontFile{"truetype/adf/UniversalisADFStd-Cond.otf", "fonts-adf-universalis"},
      FontFile{"truetype/adf/UniversalisADFStd-Bold.otf", "fonts-adf-universalis"},
      FontFile{"truetype/adf/GilliusADF-Regular.otf", "fonts-adf-gillius"},
      FontFile{"truetype/adf/GilliusADF-Cond.otf", "fonts-adf-gillius"},
      FontFile{"truetype/adf/GilliusADF-Bold.otf", "fonts-adf-gillius"},
      FontFile{"truetype/adf/MekanusADFStd-Regular.otf", "fonts-adf-mekanus"},
      FontFile{"truetype/adf/Verana-Regular.otf", "fonts-adf-verana"},
      FontFile{"truetype/adf/VeranaSans-Regular.otf", "fonts-adf-verana"},
      FontFile{"truetype/adf/IkariusADFStd-Regular.otf", "fonts-adf-ikarius"},
      FontFile{"truetype/adf/LibrisADFStd-Regular.otf", "fonts-adf-libris"},
      FontFile{"truetype/adf/RomandeADFStd-Regular.otf", "fonts-adf-romande"},
      FontFile{"truetype/adf/BaskervaldADFStd.otf", "fonts-adf-baskervald"},
      FontFile{"truetype/adf/TribunADFStd-Regular.otf", "fonts-adf-tribun"},
      FontFile{"opentype/allerta/allerta_medium.otf", "fonts-allerta"},
      FontFile{"opentype/allerta/allerta_stencil.otf", "fonts-allerta"},
      FontFile{"truetype/anonymous-pro/Anonymous Pro.ttf", "fonts-anonymous-pro"},
      FontFile{"truetype/averia-gwf/AveriaSansGWF-Regular.ttf", "fonts-averia-sans-gwf"},
      FontFile{"truetype/averia-gwf/AveriaSerifGWF-Regular.ttf", "fonts-averia-serif-gwf"},
      FontFile{"opentype/bebas-neue/BebasNeue-Regular.otf", "fonts-bebas-neue"},
      FontFile{"truetype/beteckna/BetecknaGS.ttf", "fonts-beteckna"},
      FontFile{"opentype/cabin/Cabin-Regular.otf", "fonts-cabin"},
      FontFile{"opentype/cantarell/Cantarell-Regular.otf", "fonts-cantarell"},
      FontFile{"truetype/crosextra/Caladea-Regular.ttf", "fonts-crosextra-caladea"},
      FontFile{"truetype/fifthhorseman/dkg.ttf", "fonts-dkg-handwriting"},
      FontFile{"truetype/fifthhorseman/dkgBd.ttf", "fonts-dkg-handwriting"},
      FontFile{"truetype/dustin/Domestic_Manners.ttf", "fonts-dustin"},
      FontFile{"truetype/dustin/Dustismo_Roman.ttf", "fonts-dustin"},
      FontFile{"truetype/firacode/FiraCode-Regular.ttf", "fonts-firacode"},
      FontFile{"truetype/fonts-georgewilliams/Caliban.ttf", "fonts-georgewilliams"},
      FontFile{"truetype/fonts-georgewilliams/GWMonospace.ttf", "fonts-georgewilliams"},
      FontFile{"opentype/neohellenic/GFSNeohellenic.otf", "fonts-gfs-neohellenic"},
      FontFile{"fonts-go/Go-Mono.ttf", "fonts-go"},
      FontFile{"fonts-go/Go-Regular.ttf", "fonts-go"},
      FontFile{"truetype/hack/Hack-Regular.ttf", "fonts-hack"},
      FontFile{"truetype/hermit/Hermit-medium.otf", "fonts-hermit"},
      FontFile{"opentype/inter/Inter-Regular.otf", "fonts-inter"},
      FontFile{"truetype/jetbrains-mono/JetBrainsMono-Regular.ttf", "fonts-jetbrains-mono"},
      FontFile{"truetype/karla/Karla-Regular.otf", "fonts-karla"},
      FontFile{"truetype/kiloji/kiloji.ttf", "fonts-kiloji"},
      FontFile{"opentype/league-mono/LeagueMono-Regular.otf", "fonts-league-mono"},
      FontFile{"opentype/league-mono/LeagueMono-Condensed.otf", "fonts-league-mono"},
      FontFile{"opentype/league-mono/LeagueMono-WideRegular.otf", "fonts-league-mono"},
      FontFile{"opentype/league-spartan/LeagueSpartan-Regular.otf", "fonts-league-spartan"},
      FontFile{"opentype/linux-libertine/LinBiolinum_R.otf", "fonts-linuxlibertine"},
      FontFile{"opentype/linux-libertine/LinLibertine_R.otf", "fonts-linuxlibertine"},
      FontFile{"opentype/linux-libertine/LinLibertine_M.otf", "fonts-linuxlibertine"},
      FontFile{"truetype/monofur/monof55.ttf", "fonts-monofur"},
      FontFile{"truetype/mononoki/mononoki-Regular.ttf", "fonts-mononoki"},
      FontFile{"opentype/mplus/Mplus1-Regular.otf", "fonts-mplus"},
      FontFile{"opentype/mplus/Mplus1Code-Regular.otf", "fonts-mplus"},
      FontFile{"opentype/mplus/MplusCode50-Regular.otf", "fonts-mplus"},
      FontFile{"opentype/national-park/NationalPark-Regular.otf", "fonts-national-park"},
      FontFile{"truetype/fonts-oldstandard/OldStandard-Regular.ttf", "fonts-oldstandard"},
      FontFile{"truetype/open-sans/OpenSans-Regular.ttf", "fonts-open-sans"},
      FontFile{"truetype/opendin/OSP-DIN.ttf", "fonts-opendin"},
      FontFile{"truetype/oxygen/Oxygen-Sans.ttf", "fonts-oxygen"},
      FontFile{"truetype/oxygen/OxygenMono-Regular.ttf", "fonts-oxygen"},
      FontFile{"truetype/paratype/PTM55F.ttf", "fonts-paratype"},
      FontFile{"truetype/paratype/PTS55F.ttf", "fonts-paratype"},
      FontFile{"truetype/paratype/PTF55F.ttf", "fonts-paratype"},
      FontFile{"truetype/paratype/PTN57F.ttf", "fonts-paratype"},
      FontFile{"truetype/play/Play-Regular.ttf", "fonts-play"},
      FontFile{"opentype/quattrocento/Quattrocento-Regular.otf", "fonts-quattrocento"},
      FontFile{"truetype/quicksand/Quicksand-Medium.ttf", "fonts-quicksand"},
      FontFile{"opentype/roboto/slab/RobotoSlab-Regular.otf", "fonts-roboto-slab"},
      FontFile{"truetype/roboto/unhinted/RobotoCondensed-Regular.ttf", "fonts-roboto-unhinted"},
      FontFile{"truetype/roboto/unhinted/RobotoTTF/Roboto-Regular.ttf", "fonts-roboto-unhinted"},
      FontFile{"truetype/rufscript/Rufscript010.ttf", "fonts-rufscript"},
      FontFile{"truetype/seto/setofont.ttf", "fonts-seto"},
      FontFile{"truetype/andika/Andika-Regular.ttf", "fonts-sil-andika"},
      FontFile{"truetype/charis/CharisSIL-Regular.ttf", "fonts-sil-charis"},
      FontFile{"truetype/sjfonts/Delphine.ttf", "fonts-sjfonts"},
      FontFile{"truetype/sjfonts/SteveHand.ttf", "fonts-sjfonts"},
      FontFile{"truetype/tiresias/tiresias_infofont.ttf", "fonts-tiresias"},
      FontFile{"truetype/tiresias/tiresias_pcfont.ttf", "fonts-tiresias"},
      FontFile{"truetype/tiresias/tirekv__.ttf", "fonts-tiresias"},
      FontFile{"opentype/tlwg/Purisa.otf", "fonts-tlwg-purisa-otf"},
      FontFile{"opentype/tlwg/TlwgTypewriter.otf", "fonts-tlwg-typewriter-otf"},
      FontFile{"truetype/tomsontalks/TomsonTalks.ttf", "fonts-tomsontalks"},
      FontFile{"opentype/unifont/unifont.otf", "fonts-unifont"},
      FontFile{"truetype/vlgothic/VL-Gothic-Regular.ttf", "fonts-vlgothic"},
      FontFile{"truetype/yusei-magic/YuseiMagic-Regular.ttf", "fonts-yusei-magic"},
      FontFile{"truetype/cmu/cmunrm.ttf", "fonts-cmu"},
      FontFile{"truetype/cmu/cmunss.ttf", "fonts-cmu"},
      FontFile{"truetype/cmu/cmunssdc.ttf", "fonts-cmu"},
      FontFile{"truetype/cmu/cmuntt.ttf", "fonts-cmu"},
      FontFile{"truetype/cmu/cmunbtl.ttf", "fonts-cmu"},
      FontFile{"truetype/cmu/cmunorm.ttf", "fonts-cmu"},
      FontFile{"truetype/cmu/cmunvt.ttf", "fonts-cmu"},
      FontFile{"opentype/ipafont-gothic/ipag.ttf", "fonts-ipafont-gothic"},
      FontFile{"opentype/fonts-hosny-thabit/Thabit.ttf", "fonts-hosny-thabit"},
  };
}();

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_FURTHER_FONTS_H_
