package insidelift.console.cli;

import insidelift.engine.units.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** In which units pressures and temperatures are shown, and what a number without one means. */
public final class UnitsOption {

  /** Words such as {@code us} or {@code psi,F}. */
  public static final class Words implements ITypeConverter<Units> {
    @Override
    public Units convert(String words) {
      try {
        return Units.named(words);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      converter = Words.class,
      description = "metric, us, uk, or units such as psi,F; else as in your country")
  private Units told;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec mixee;

  /** What was told here or before the verb; else what is usual in the user's country. */
  public Units chosen() {
    for (CommandSpec spec = mixee; spec != null; spec = spec.parent()) {
      for (CommandSpec mixin : spec.mixins().values()) {
        if (mixin.userObject() instanceof UnitsOption other && other.told != null) {
          return other.told;
        }
      }
    }
    return Habits.units();
  }
}
