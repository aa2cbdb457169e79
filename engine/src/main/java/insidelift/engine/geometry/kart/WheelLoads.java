package insidelift.engine.geometry.kart;

/**
 * What stands on the four wheels in a left turn.
 *
 * @param steerDeg rotation about both kingpins, degrees
 * @param lateralG lateral acceleration, g
 * @param longitudinalG longitudinal acceleration, g, negative when slowing
 * @param rearOuterN load of the right rear wheel, N
 * @param rearInnerN load of the left rear wheel, N; 0 when it is off the ground
 * @param frontInnerN load of the left front wheel, N
 * @param frontOuterN load of the right front wheel, N
 * @param rearInnerLiftMm how far the left rear tyre is off the ground, mm; 0 when it stands
 * @param frameTwistDeg roll of the frame's front half less that of its rear half, degrees
 * @param frontRollDeg roll of the frame's front half, degrees, positive with the outer side down
 */
public record WheelLoads(
    double steerDeg,
    double lateralG,
    double longitudinalG,
    double rearOuterN,
    double rearInnerN,
    double frontInnerN,
    double frontOuterN,
    double rearInnerLiftMm,
    double frameTwistDeg,
    double frontRollDeg) {}
