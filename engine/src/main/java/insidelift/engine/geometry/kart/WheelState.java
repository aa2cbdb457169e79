package insidelift.engine.geometry.kart;

/**
 * Where steering has brought one front wheel, seen from the frame.
 *
 * @param camberDeg camber relative to the frame, degrees, positive with the top outboard
 * @param heightMm height of the lowest point of the rim against straight ahead, mm, negative down
 */
public record WheelState(double camberDeg, double heightMm) {}
