package kitwright.edit;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Kind;

/**
 * What is done at the bench, at the crate and at the desk, as far as one rule for all can ask it.
 */
public final class Deeds {
  private Deeds() {}

  public static List<Deed> all() {
    return List.of(
        Deed.changes(
                "begin",
                Kind.TASKS,
                "Records that a task was begun.",
                "kitwright begin lay-sole --on 2026-03-02")
            .once("started"),
        Deed.changes(
                "finish",
                Kind.TASKS,
                "Records that a task is finished; where it says no start, the same day is its"
                    + " start.",
                "kitwright finish lay-sole")
            .once("finished"),
        Deed.begins(
                "short",
                Kind.SHORTAGES,
                "Records that something of the kit is missing or no good.",
                "kitwright short keel-bolts 4 --cause damaged --evidence evidence/crate-2.jpg")
            .given("item", "qty")
            .offered("evidence", "remark"),
        Deed.begins(
                "demand",
                Kind.CLAIMS,
                "Begins a claim, line by line: each shortage, how much of it, and what is asked.",
                "kitwright demand short-plank short-screws,qty=40,remedy=refund --remedy credit")
            .given("shortages")
            .asked("shortages")
            .offered("shortages.qty", "then"),
        Deed.changes(
                "send",
                Kind.CLAIMS,
                "Records that a claim went out, how, and by which day an answer is asked.",
                "kitwright send claim-2026-02-10 --by e-mail --letter letters/claim.md")
            .once("sent")
            .offered("by", "reply-by", "letter"),
        Deed.changes(
                "answer",
                Kind.CLAIMS,
                "Records what came of a claim: an answer, a promise, goods, money, or a reminder.",
                "kitwright answer claim-2026-02-10 promised --expect 2026-04-16 --of short-plank")
            .into("events")
            .given("what", "text")
            .offered("of", "text", "expect", "evidence"),
        Deed.changes(
                "settle",
                Kind.CLAIMS,
                "Records how a claim ended, or with --of how one line of it did.",
                "kitwright settle claim-2026-02-10 credited 63.00 EUR --of short-plank")
            .into("settled")
            .once("settled")
            .given("how", "amount")
            .offered("amount"),
        Deed.begins(
                "buy",
                Kind.SPENDING,
                "Records something bought and paid.",
                "kitwright buy \"oak boards\" 46.20 EUR --line timber --replaces short-plank")
            .fixed("state", "paid")
            .given("what", "amount")
            .offered("to", "replaces", "qty", "receipt"),
        Deed.begins(
                "order",
                Kind.SPENDING,
                "Records something ordered, to be paid later.",
                "kitwright order \"keel bolts\" 120 EUR --line hardware --expected 2026-04-20")
            .fixed("state", "ordered")
            .given("what", "amount")
            .offered("to", "expected", "replaces", "qty"),
        Deed.begins(
                "pay",
                Kind.SPENDING,
                "Records a payment of an order, whole or in part.",
                "kitwright pay spend-2026-02-01-order 60 EUR")
            .fixed("state", "paid")
            .given("pays", "amount")
            .asked("pays")
            .offered("in-full", "receipt"),
        Deed.begins(
                "refund",
                Kind.SPENDING,
                "Records money that came back for a payment.",
                "kitwright refund spend-2026-02-02-kit 63.00 EUR")
            .fixed("state", "refunded")
            .given("refunds", "amount")
            .asked("refunds")
            .offered("receipt"),
        Deed.begins(
                "log",
                Kind.LOG,
                "Writes the log of a day, or adds to it: hours, progress, what was used up.",
                "kitwright log --hours me=5.5 --tasks \"lay-sole=40 %\" --used \"item=plank,qty=4"
                    + " each,task=lay-sole\" --words \"The first boards lie.\"")
            .offered("hours", "tasks", "used", "used.task", "photos"),
        Deed.begins(
                "borrow",
                Kind.BORROWED,
                "Records a borrowed tool, and its condition when it came.",
                "kitwright borrow jigsaw --from neighbour --condition \"sole plate scratched\""
                    + " --due 2026-02-28")
            .given("tool")
            .offered("due", "worth", "needed-for"),
        Deed.changes(
                "return",
                Kind.BORROWED,
                "Records that a borrowed tool went back, and its condition.",
                "kitwright return jigsaw \"as it came\"")
            .once("returned")
            .given("back")
            .asked("back")
            .offered("repair"),
        Deed.begins(
                "propose",
                Kind.SUBSTITUTIONS,
                "Records that something shall be built otherwise than drawn, and why.",
                "kitwright propose short-plank --use \"stock=oak-plank,qty=2 each\" --grade finish"
                    + " --why \"oak lies ready\" --hold lay-sole --proposed by=me")
            .given("for")
            .asked("proposed")
            .offered("use", "hold", "assessment"),
        Deed.begins(
                "calculate",
                Kind.ASSESSMENTS,
                "Records how a substitution is to be worked out; “kitwright assess” then does it.",
                "kitwright calculate sub-oak --method timber --designed sole-drawn --built"
                    + " sole-as-built --require stiffness=1,strength=1")
            .offered("designed", "built", "require", "load"));
  }

  public static Optional<Deed> named(String word) {
    return all().stream().filter(deed -> deed.word().equals(word)).findFirst();
  }
}
