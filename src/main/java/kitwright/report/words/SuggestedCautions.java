package kitwright.report.words;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Cautions that the words of a task suggest, where it does not state its hazards. A list of words
 * never holds them all, so it only adds, and rather one too many (common practice, no source).
 */
final class SuggestedCautions {
  private static final Map<Caution, Pattern> WORDS = new EnumMap<>(Caution.class);

  static {
    suggests(
        Caution.SAW,
        "\\w*saw(?:s|ing|n)?|cut(?:s|ting)?|rip(?:s|ping)?|scarf(?:s|ing)?|scarph\\w*|plan(?:e|es|ing)"
            + "|mill(?:s|ing)?|rout(?:e|er|ing)|trim(?:s|ming)?|notch\\w*|rebat\\w*|rabbet\\w*"
            + "|mitre\\w*|chop");
    suggests(
        Caution.DUST,
        "\\w*sand(?:s|ing|ed)?|plane|planing|fair(?:s|ing)?|long-?board\\w*|shape|shaping|round|grind\\w*|scrap(?:e|es|ing)|feather\\w*|rub(?:bing)?"
            + " down|strip(?:ping)? (?:the |off )?(?:old )?paint|dust\\w*");
    suggests(
        Caution.RESIN,
        "resin\\w*|epoxy|glu(?:e|es|ed|ing)|laminat\\w+|(?:fibre|fiber)?glass\\w*|sheath\\w*|fill(?:s|ing)?"
            + "|\\w*coat(?:s|ing)?|varnish\\w*|paint\\w*|prim(?:e|er|ing)|bond\\w*|bed|bedding|tab(?:s|bing)?|fillet\\w*|wet(?:ting)?"
            + " out|infus\\w*|vacuum\\w*|bagg?(?:ing)?|pot(?:ting)?"
            + "|thicken\\w*|acetone|solvents?|degreas\\w*|putty|filler|spray\\w*|antifoul\\w*|seal\\w*"
            + "|caulk\\w*|adhesive|hardener|cure|curing|cloth|plies");
    suggests(
        Caution.HEATER,
        "heat\\w*|warm\\w*|stoves?|burners?|kerosene|paraffin|propane|blow ?torch|blow"
            + " ?lamp|steam\\w*");
    suggests(
        Caution.LEAD,
        "lead|ballast|(?:wheel )?weights?|melt\\w*|cast(?:s|ing)? (?:the |a )?(?:keel|shoe|bulb)"
            + "|pour\\w* (?:the |a )?(?:keel|shoe|bulb)");
    suggests(
        Caution.LIFTING,
        "lift\\w*|(?:turn|flip|roll|tip|right)\\w* (?:over )?(?:the (?:hull|boat)|her|it|over)\\w*"
            + "|invert\\w*|right way up|hoist\\w*|crane\\w*|winch\\w*|gantry|heav(?:e|es|ing)"
            + "|step (?:the )?(?:\\w+ )?mast\\w*|unstep\\w*|launch\\w*|jack(?:s|ing)?(?: up)?"
            + "|haul\\w* (?:her |it )?out|hang (?:the )?(?:\\w+ )?(?:rudder|board|centreboard|keel)"
            + "|drop (?:in )?the (?:engine|keel)|engine|moving? (?:the )?(?:hull|boat)");
    suggests(Caution.CRATE, "crates?|unpack\\w*|unload\\w*|pallets?|heavy (?:box|boxes|load)");
    suggests(
        Caution.ELECTRICAL,
        "wir(?:e|es|ed|ing)|electric\\w*|batter(?:y|ies)|charger|switch\\w*|breakers?|fuses?|cabl(?:e|es|ing)|solder\\w*|solar|inverter|alternator|shore"
            + " power|bus ?bars?|navigation lights?|gas|stove|lamps?|bilge"
            + " pumps?|instruments?|sockets?");
    suggests(
        Caution.HEIGHT,
        "aloft|mast ?head|up the mast|rig(?:ging)?|shrouds|scaffold\\w*|ladders?|over the"
            + " side|roof");
  }

  private SuggestedCautions() {}

  private static void suggests(Caution caution, String words) {
    WORDS.put(caution, Pattern.compile("(?i)(?<![\\p{L}])(?:" + words + ")(?![\\p{L}])"));
  }

  /** What the words of a task suggest. */
  static Set<Caution> by(String words) {
    Set<Caution> all = EnumSet.noneOf(Caution.class);
    WORDS.forEach(
        (caution, pattern) -> {
          if (pattern.matcher(words).find()) {
            all.add(caution);
          }
        });
    return all;
  }

  /** Whether words suggest one of them. */
  static boolean suggest(Caution caution, String words) {
    return by(words).contains(caution);
  }
}
