package kitwright.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Ledger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a third crew, of many countries, would give away, and what it would not. */
class OverheardStrangersTest {
  private static final Ledger LEDGER =
      Sample.ledger(
          """
          build: {name: Plover, currency: EUR, started: 2026-01-05, contingency: 2400, own-hour: 22.50}
          parties:
            - {id: kitfirm, name: Süßmann Bootsbau GmbH & Co. KG, role: supplier, contact: "Hafenstraße 12, 24159 Kiel"}
            - {id: me, name: Zoë van der Velde-Łukasik, role: builder, contact: "zoe_vdv(at)plover.example"}
            - {id: ng, name: Ng, role: helper, contact: "020 7946 0018"}
            - {id: ml, name: Mary-Ann O’Neill, role: helper}
            - {id: yuri, name: Юрий Громов, role: helper, contact: "8 (495) 123-45-67"}
            - {id: wei, name: 李伟, role: helper}
            - {id: aegir, name: Ægir Þórsson, role: lender, contact: "354-555-0199"}
            - {id: kath, name: Katherine (Kit) Mossop, role: helper}
            - {id: surv, name: J. B. Attwater, role: surveyor}
            - {id: hope, name: Hope May Rivers, role: helper}
            - {id: dv, name: De Vries, role: engineer, may-sign: [structural]}
          budget: [{line: rig, title: Rig, amount: 12750}]
          kit: [{id: strake, what: garboard strake, qty: 6, price: 118.40 EUR}]
          deliveries:
            - {id: d1, received: 2026-03-02, from: kitfirm, note: LS-4471-B, counted: [{item: strake, qty: 4}]}
          shortages: [{id: s, item: strake, qty: 2, found: 2026-03-03, cause: damaged, remark: "the long strake has a split from the fork of their truck"}]
          claims:
            - id: cl-strake
              against: kitfirm
              shortages: [s]
              sent: 2026-03-04
              remedy: replacement
              events: [{on: 2026-03-09, what: answered, text: "We regret that the strakes left our hall in order and were damaged on the road"}]
          spending:
            - {id: p1, on: 2026-03-05, line: rig, what: mast tube, amount: 3480 EUR, to: Pallesen Metall, state: paid}
            - {id: p2, on: 2026-03-06, line: rig, what: wire, amount: 96.15 EUR, to: A. Quick & Daughters, state: paid, receipt: {file: receipts/RE-2026-0811.pdf, says: invoice}}
          borrowed: [{id: planer, tool: thickness planer, from: aegir, on: 2026-03-01, due: 2026-04-01, condition: good, worth: 1900}]
          """);

  private static final Overheard OVERHEARD = Overheard.of(LEDGER);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Suessmann has answered.",
        "Sussmann has answered.",
        "SÜSSMANN has answered.",
        "Süßmanns have answered.",
        "Z. v. d. V.-Ł. planed.",
        "ZvdV planed.",
        "Z. V.-Ł. planed.",
        "Zoe planed.",
        "Zoé planed.",
        "Lukasik planed.",
        "Velde’s plane is sharp.",
        "vandervelde planed.",
        "Ng planed.",
        "NG planed.",
        "ng’s tea was strong.",
        "Mary Ann planed.",
        "Maryann planed.",
        "MaryAnn planed.",
        "M-A. planed the keel.",
        "O'Neil l planed. ONeill planed.",
        "O Neill planed.",
        "Yuri planed.",
        "Юрий planed.",
        "ЮРИЯ planed. Громова too.",
        "李伟 planed.",
        "Aegir lent it.",
        "Thorsson lent it.",
        "Þorsson lent it.",
        "Kit Mossop planed.",
        "Kathy? No, Katherine.",
        "KM planed.",
        "Attwater looked.",
        "JBA looked.",
        "J.B.A. looked.",
        "jb looked. J B Attwater did.",
        "Hope planed.",
        "It was Rivers who planed.",
        "de vries said yes.",
        "DeVries said yes.",
        "De  Vries said yes.",
        "Quick sent the wire.",
        "Pallesen’s tube is bent.",
        "pallesenmetall sent the tube.",
        "N&uuml;tzlich; S&uuml;&szlig;mann has answered.",
        "S[ü](x)[ß](y)mann has answered.",
        "Zo<b>ë</b> planed.",
        "![ ](evidence/zoe-and-ng.jpg)",
        "![ ](evidence/S%C3%BC%C3%9Fmann-letter.jpg)",
        "Z o ë planed.",
        "Z-o-ë planed.",
        "Pal\u00ADle\u200Bsen was here.",
        "P.a.l.l.e.s.e.n was here.",
        "P\u0430llesen with a letter of another script.",
        "Ｐａｌｌｅｓｅｎ was here.",
        "𝐏𝐚𝐥𝐥𝐞𝐬𝐞𝐧 was here.",
        "nesellaP? Pallesén it was.",
        "Call 02079460018.",
        "Call 020-7946-0018.",
        "Call (020) 7946 0018.",
        "Call 0044 20 7946 0018.",
        "Call +44.20.7946.0018.",
        "Call 7946 0018.",
        "Call 0 2 0 7 9 4 6 0 0 1 8.",
        "Call 020/7946/0018.",
        "Call 020 – 7946 – 0018.",
        "Call oh two oh, seven nine four six, double oh one eight.",
        "Call 555 0199.",
        "Call 5550199.",
        "Call ０２０ ７９４６ ００１８.",
        "Call ٠٢٠٧٩٤٦٠٠١٨.",
        "Write to zoe_vdv@plover.example.",
        "Write to zoe_vdv at plover dot example.",
        "Write to zoe_vdv (at) plover.example.",
        "mailto:zoe_vdv&#64;plover.example",
        "They sit at Hafenstrasse 12.",
        "They sit in 24159 Kiel.",
        "They sit in Kiel.",
        "The tube was 3480.",
        "The tube was 3.480,00.",
        "The tube was 3 480 all in.",
        "The tube was 3480.",
        "The tube was 3,5k.",
        "The tube set us back three and a half thousand.",
        "The tube was thirty-four eighty, he said: 3480,-.",
        "Three thousand four hundred and eighty for the tube.",
        "The wire was 96.15.",
        "The wire was 96,15.",
        "The wire was ninety-six fifteen.",
        "A strake costs 118.40.",
        "A strake is 118 each.",
        "EUR118.",
        "118€.",
        "118 €uro.",
        "118 Eur.",
        "€uros 118.",
        "It is worth 1900.",
        "It is worth nineteen hundred.",
        "It is worth a couple of grand.",
        "My hour is 22.50.",
        "We have 2400 left for surprises.",
        "12.750 for the rig.",
        "12’750 for the rig.",
        "Budget: 12750",
        "The strakes left our hall in order and were damaged on the road, they write.",
        "cl-strake is answered.",
        "cl strake is answered.",
        "cl_strake.jpg",
        "Delivery note LS-4471-B.",
        "LS 4471 B lies in the file.",
        "Invoice RE-2026-0811.",
        "RE 2026 0811",
        "54.3233° N, 10.1228° E",
        "54.3233, 10.1228",
        "54°19'24\"N 10°07'22\"E",
        "geo:54.3233,10.1228",
        "https://maps.example/?q=54.3233,10.1228",
        "The shed is at IBAN DE89 3704 0044 0532 0130 00.",
        "They rejected our claim.",
        "They will not send new ones, they are to blame.",
        "We took them to arbitration.",
        "Our solicitor wrote.",
        "We want our money back.",
        "They gave us a credit note.",
        "It was a bargain.",
        "Too expensive for us.",
        "We are broke.",
        "He earns too little.",
        "Follow @plover_build there.",
        "The shed is at 9F6C8442+9F.",
        "ng_and_zoe.jpg",
        "KIT MOSSOP and HOPE.",
        "clstrake",
      })
  void theAuthorIsShown(String text) {
    assertThat(OVERHEARD.in(text)).as(text).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "The garboard strake lies along the keel.",
        "Long strakes are split from thick stock.",
        "We planed until the light went.",
        "A long hinge of sanding; nothing else.",
        "We hope for dry days.",
        "No hope of rain stopping today.",
        "The rivers are high.",
        "A quick word, then back to the bench.",
        "The daughters of the wind, said the radio.",
        "A kit of parts, laid out on the floor.",
        "Mossy planks by the door.",
        "The attic water tank froze.",
        "Frames 24 to 31 are up.",
        "24 frames, 48 floors, 96 cleats.",
        "Cut 96 plugs.",
        "118 rivets in the garboard.",
        "Spaced at 118 mm, edge to edge.",
        "3480 mm overall, mast tube on the trestles.",
        "Lofted 12.750 m on the floor.",
        "2400 mm between the bulkheads.",
        "Turned 1900 rivets? No, 190.",
        "Mixed 100:45 by weight.",
        "From 08:30 to 17:15, with a break.",
        "Pot life 22 minutes at 25 °C.",
        "Cloth 300 g/m², twill, 0/90.",
        "Screws 5 x 60, bits PZ2.",
        "Sanding with 80, 120, 180 and 240 grit.",
        "Version 2 of the jig, 3/4 inch ply.",
        "Moulds at stations 0, 1, 2.5 and 4.",
        "Radius 1500, height 40 at the middle.",
        "The thickness planer takes 3 mm a pass.",
        "The road to the yard was damaged by frost.",
        "We regret nothing.",
        "The order of the hall light switches is odd.",
        "Rain, 14 mm in the night.",
        "Gusts of 42 knots; the tent stood.",
        "A van blocked the lane.",
        "Den of foxes under the shed.",
        "Order in the shop is half the work.",
        "A hundred and twenty clamps, and still one short.",
        "The saw is good at straight lines. Example: the keel.",
        "He looked at dot after dot along the batten.",
        "Two of us; the third made soup.",
        "Anneal the copper, then bend it.",
        "We broke for lunch at noon.",
        "The credit goes to the sharp iron.",
        "Weather: 4 days of rain, 3 of sun.",
        "Rivets 3.5 mm, roves to match.",
        "1:8 scarfs, twelve of them.",
        "Tow rope 30 m, 12 mm.",
        "Ring frames bolted up.",
        "Read the data sheet first; it says 15 °C and above.",
        "Wednesday 11 March: glued. Thursday 12 March: cured.",
        "On 12.3.2026 the stem was glued.",
        "Since 2025 we have waited for this day.",
        "The seasons 2024-2026 went into her.",
        "The fork lift moved the crate in order to clear the hall.",
        "He turned nineteen hundred and some screws by hand.",
        "Six strokes, forty strokes, ninety strokes: fair.",
        "Twenty to eight and still light.",
        "At 45° 30' the bevel meets the stem.",
        "Cut at the dot, then at the next.",
        "One two three four, and over she goes.",
        "OK, the fit is good.",
      })
  void theBenchIsLeftAlone(String text) {
    assertThat(OVERHEARD.in(text)).as(text).isEmpty();
  }
}
