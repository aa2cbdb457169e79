package insidelift.console.page;

import insidelift.console.report.KartSheet;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.sheet.FrontEndSheet;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

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

  /** A kart whose own record has all that can be told. */
  static final String OWN =
      "{'schema':1,'kart':{'camber':{'left':0.5,'right':0.25},'caster':{'left':1,'right':1},"
          + "'baseline':{'dry':{'camber':{'left':0.5,'right':0.25},'caster':{'left':1,'right':1.25},"
          + "'toe':{'left':0.8,'right':0.6,'discMm':280},'laden':{'camber':{'left':0,'right':0}},"
          + "'pressures':'LONG','rear-pressure':'LONG','seat-height':'LONG','front-width':'LONG',"
          + "'bars':'LONG','struts':'LONG','rear-width':'LONG','hubs':'LONG','front-height':'LONG',"
          + "'rear-height':'LONG','ballast':'LONG','seat':'LONG','axle':'LONG','noted':{'cold':'LONG',"
          + "'hot':'LONG','washers':'LONG','by':'LONG','checked-by':'LONG','date':'2026-05-09',"
          + "'track':'LONG','weather':'LONG'}},'wet':{'camber':{'left':1.5,'right':1.5},"
          + "'caster':{'left':3,'right':3},'toe':{'left':3,'right':3},'hubs':'LONG','seat':'LONG'}}}}";

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

  /** A front-end sheet whose texts are as long as they may be, and not safe as they stand. */
  static String sheet(String json, String kart) {
    String text = "<i>x</i> & " + "a rather long word for it ".repeat(2).substring(0, 48);
    return new Pages()
        .kartSheet(
            KartSheet.of(
                FrontEndSheet.of(ADVISOR, situation(json.replace("LONG", text))),
                List.of("hubs", "axle"),
                kart,
                DAY));
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
