package insidelift.console.start;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version of this build, which its pom tells and its jar carries. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {
      "insidelift "
          + Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
              .orElse("(classes without a jar)")
    };
  }
}
