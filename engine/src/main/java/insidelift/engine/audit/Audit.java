package insidelift.engine.audit;

import insidelift.engine.audit.AuditReport.Allowed;
import insidelift.engine.audit.AuditReport.Result;
import insidelift.engine.audit.AuditReport.Visit;
import insidelift.engine.audit.check.Allowances;
import insidelift.engine.audit.check.Comparisons;
import insidelift.engine.audit.check.CompiledAgreement;
import insidelift.engine.audit.check.Completeness;
import insidelift.engine.audit.check.Contradiction;
import insidelift.engine.audit.check.Dependence;
import insidelift.engine.audit.check.Invariants;
import insidelift.engine.audit.check.Knowledge;
import insidelift.engine.audit.check.Reading;
import insidelift.engine.audit.check.Remark;
import insidelift.engine.audit.check.RepeatedRules;
import insidelift.engine.audit.check.RuleActivity;
import insidelift.engine.audit.check.Severity;
import insidelift.engine.consultation.advice.Advisor;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Audits the knowledge of an advisor: its rules against each other, its notes, its advice. */
public final class Audit {

  private final Knowledge knowledge;
  private final Allowances allowances;
  private final List<Result> results = new ArrayList<>();
  private boolean failed;

  private Audit(Knowledge knowledge, Allowances allowances) {
    this.knowledge = knowledge;
    this.allowances = allowances;
  }

  /**
   * Audits what an advisor knows.
   *
   * @param advisor who reasons by it
   * @param today the day by which notes must have been reviewed
   * @param effort how many situations are visited
   */
  public static AuditReport of(Advisor advisor, LocalDate today, Effort effort) {
    return of(advisor, today, effort, Allowances.load());
  }

  static AuditReport of(Advisor advisor, LocalDate today, Effort effort, Allowances allowances) {
    return new Audit(new Knowledge(advisor, today), allowances).run(effort);
  }

  private AuditReport run(Effort effort) {
    Reading reading = new Reading(knowledge);
    check("illegal", "words that are not in the vocabulary", reading.illegal());
    boolean lawful = results.get(0).remarks().isEmpty();
    RepeatedRules repetition = new RepeatedRules(knowledge);
    check("redundant", "rules that say the same", repetition.redundant());
    check("subsumed", "rules that a more general one makes needless", repetition.subsumed());
    check("needless", "premises that follow from another", repetition.needlessPremises());
    check(
        "opposed",
        "claims that contradict each other outside a dispute",
        new Contradiction(knowledge).opposed());
    Dependence dependence = new Dependence(knowledge);
    check("unreachable", "findings that cannot be reached", dependence.unreachable());
    check("dead-end", "findings and claims that nothing bears on", dependence.deadEnds());
    check("unread", "answers that no rule reads", reading.unread());
    Completeness completeness = new Completeness(knowledge);
    check("incomplete", "changes without caution, confirm, undo or job", completeness.changes());
    check("dispute", "disputes without both sides", completeness.disputes());
    check("source", "sources that do not resolve", completeness.sources());
    check("review", "notes past their review date", completeness.reviews());
    List<Visit> visits = lawful ? visit(effort) : List.of();
    results.add(
        new Result("allowed", "allowances that allow nothing", allowances.idle(), List.of()));
    return new AuditReport(
        AuditReport.SCHEMA,
        knowledge.rules().size(),
        knowledge.notes().ids().size(),
        results,
        visits,
        visits.stream().mapToLong(Visit::visited).sum(),
        failed);
  }

  private List<Visit> visit(Effort effort) {
    Advisor plain = knowledge.plain();
    RuleActivity voices = new RuleActivity(knowledge);
    Invariants invariants = new Invariants(knowledge.words());
    Comparisons comparisons = new Comparisons(plain, effort.every());
    CompiledAgreement agreement = new CompiledAgreement(knowledge.advisor(), effort.every());
    List<Visit> visits =
        new Sweep(plain, List.of(voices, invariants, comparisons, agreement))
            .run(knowledge, effort, voices::unheard).stream()
                .map(seen -> new Visit(seen.of(), seen.size(), seen.visited(), seen.whole()))
                .toList();
    check("silent", "rules that never speak", voices.silent());
    check("gap", "situations with neither advice nor a reason for none", voices.gaps());
    check("invariant", "what must hold in every situation", invariants.remarks());
    check("comparison", "what must hold between situations", comparisons.remarks());
    check("index", "situations in which the rules and their index differ", agreement.remarks());
    return visits;
  }

  private void check(String id, String title, List<Remark> remarks) {
    List<Remark> open = new ArrayList<>();
    List<Allowed> allowed = new ArrayList<>();
    for (Remark remark : remarks) {
      Optional<Allowances.Allowance> allowance = allowances.find(id, remark);
      if (allowance.isPresent()) {
        allowed.add(new Allowed(remark, allowance.get().reason(), allowance.get().date()));
      } else {
        open.add(remark);
        failed |= remark.severity() == Severity.ERROR;
      }
    }
    results.add(new Result(id, title, open, allowed));
  }
}
