package insidelift.console.page;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.CaseReader;
import insidelift.shared.situation.Situation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** Pit cards of cases written as JSON with single quotes. */
final class Cards {

  static final LocalDate DAY = LocalDate.of(2026, 5, 9);

  static final String WET_HEAVY =
      "{'schema':1,'answers':{'water':'wet','tyres':'wets','steering-weight':'heavy',"
          + "'driver-strength':'limited','time-left':45},'kart':{'camber':{'left':0.0,'right':0.0},"
          + "'caster':{'left':0.0,'right':0.0,'reference':'neutral'},"
          + "'eccentrics':{'camberPerPosition':0.5,'casterPerPosition':1.0}}}";

  /** Both levers move at once: the longest card. */
  static final String WET = "{'schema':1,'answers':{'water':'wet','tyres':'wets'}}";

  /** The kart's own washers are described, so the card says where each goes. */
  static final String WASHERS =
      "{'schema':1,'answers':{'water':'wet','tyres':'wets'},'kart':{'eccentrics':{'pivots':'both',"
          + "'throwMm':2.0,'pivotSpacingMm':60,'anglesDeg':[0,45,90,135,180,225,270,315],"
          + "'now':{'left':{'top':'1','bottom':'1'},'right':{'top':'1','bottom':'1'}}}}}";

  static final String FAULT = "{'schema':1,'answers':{'play':'some','water':'wet'}}";
  static final String NOTHING = "{'schema':1,'answers':{}}";
  static final String HOLD =
      "{'schema':1,'answers':{'water':'wet','adjustable':'none','mid-corner':'understeer'}}";

  private static final Advisor ADVISOR = Advisor.load();

  private Cards() {}

  static PitCard card(String json, String subject) {
    Situation situation = situation(json);
    return PitCardMaker.card(situation, ADVISOR.advise(situation), subject, DAY);
  }

  static String page(String json, String subject) {
    return new Pages().pitCard(card(json, subject));
  }

  static Situation situation(String json) {
    byte[] bytes = json.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    try {
      return new CaseReader(ADVISOR.vocabulary()).read(new ByteArrayInputStream(bytes));
    } catch (CaseProblem | IOException e) {
      throw new AssertionError(e);
    }
  }
}
