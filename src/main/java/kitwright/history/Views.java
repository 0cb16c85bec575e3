package kitwright.history;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.claim.ClaimStandings;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Task;
import kitwright.loan.LoanStanding;
import kitwright.money.Account;
import kitwright.money.Lacks;
import kitwright.money.LineState;
import kitwright.network.Headways;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.openmatter.Ends;
import kitwright.openmatter.Readiness;
import kitwright.shortage.ShortageStandings;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Money;
import kitwright.value.Ref;
import kitwright.value.Word;

/** The matters that follow from the records: every answer is asked where it is given. */
final class Views {
  private Views() {}

  static List<View> all() {
    return List.of(
        new Work(),
        new Counted(),
        new Missing(),
        new Claimed(),
        new Signed(),
        new Spent(),
        new Days(),
        new Tools());
  }

  private static final class Work extends View {
    Work() {
      super(Matter.WORK);
    }

    @Override
    void look(Facts day, Seen seen) {
      Headways headways = Headways.on(day);
      for (Task task : day.ledger().tasks()) {
        Optional<java.time.LocalDate> finished =
            headways
                .of(task)
                .match(
                    waiting -> Optional.empty(),
                    begun -> Optional.empty(),
                    done -> Optional.of(done.to()));
        BigDecimal share = headways.share(task);
        if (share.signum() > 0 || headways.begun(task).isPresent()) {
          seen.add(task, task.what(), new Held.Done(share, finished));
        }
      }
    }
  }

  private static final class Counted extends View {
    Counted() {
      super(Matter.COUNTED);
    }

    @Override
    void look(Facts day, Seen seen) {
      Positions positions = Positions.on(day);
      for (KitItem item : day.ledger().kit()) {
        Optional<Position> position = positions.of(new Ref(item.id(), item.at().record()));
        position
            .filter(Position::isCounted)
            .ifPresent(at -> seen.add(item, item.what(), new Held.Many(at.good())));
      }
    }
  }

  private static final class Missing extends View {
    Missing() {
      super(Matter.MISSING);
    }

    @Override
    void look(Facts day, Seen seen) {
      for (var standing : ShortageStandings.on(day).all()) {
        String what = standing.item().map(KitItem::what).orElse(standing.shortage().item().id());
        seen.add(
            standing.shortage(),
            what,
            standing.isOpen()
                ? Held.Told.of(standing.open() + " open", Word.spoken(standing.state()))
                : Held.Told.of(Word.spoken(standing.state())));
      }
    }
  }

  private static final class Claimed extends View {
    Claimed() {
      super(Matter.CLAIMED);
    }

    @Override
    void look(Facts day, Seen seen) {
      for (var standing : ClaimStandings.on(day).all()) {
        String against =
            standing.against().map(party -> party.name()).orElse(standing.claim().id());
        seen.add(standing.claim(), against, Held.Told.of(Word.spoken(standing.state())));
      }
    }
  }

  private static final class Signed extends View {
    Signed() {
      super(Matter.SIGNED);
    }

    @Override
    void look(Facts day, Seen seen) {
      for (var standing : SubstitutionStandings.on(day).all()) {
        List<String> words = new ArrayList<>(List.of(Word.spoken(standing.state())));
        standing.lacks().forEach(lack -> words.add(Word.spoken(lack)));
        seen.add(standing.substitution(), replaced(day, standing), new Held.Told(words));
      }
    }
  }

  private static String replaced(Facts day, SubstitutionStanding standing) {
    var replaced = standing.substitution().insteadOf();
    return replaced
        .item()
        .flatMap(day.ledger()::kitItem)
        .map(item -> "instead of " + item.what())
        .or(() -> replaced.what().map(what -> "instead of " + what))
        .orElse("");
  }

  private static final class Spent extends View {
    Spent() {
      super(Matter.MONEY);
    }

    @Override
    void look(Facts day, Seen seen) {
      Account account = Account.on(day);
      for (LineState line : account.all()) {
        boolean isWhole = Lacks.ofLine(line.line(), day).isEmpty();
        seen.add(line.line() + " spent", line.title() + ", spent", sum(line.spent(), isWhole));
        seen.add(
            line.line() + " end",
            line.title() + ", will end at",
            sum(line.forecast(), Lacks.ofForecast(line.line(), day).isEmpty()));
      }
    }
  }

  private static Held sum(Money money, boolean isWhole) {
    return isWhole ? new Held.Sum(money) : Held.Told.of("cannot be told whole");
  }

  private static final class Days extends View {
    Days() {
      super(Matter.DAYS);
    }

    @Override
    void look(Facts day, Seen seen) {
      Plan plan = Plan.on(day);
      Ends.on(day).told(day).ifPresent(end -> seen.add("", "The plan ends", new Held.On(end)));
      for (Planned planned : plan.ahead()) {
        plan.task(planned.id())
            .ifPresent(
                task -> seen.add(task, task.what(), new Held.On(Readiness.finish(task, day))));
      }
    }

    @Override
    boolean tells(Held was, Held is) {
      return was instanceof Held.On && is instanceof Held.On; // begun and finished is told as work
    }
  }

  private static final class Tools extends View {
    Tools() {
      super(Matter.TOOLS);
    }

    @Override
    void look(Facts day, Seen seen) {
      for (var standing : LoanStanding.on(day)) {
        seen.add(
            standing.loan(), standing.loan().tool(), Held.Told.of(Word.spoken(standing.state())));
      }
    }
  }
}
