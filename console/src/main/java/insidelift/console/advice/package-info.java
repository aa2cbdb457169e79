/**
 * The verbs at the track: advice for a case, its card, the kart's sheet, the proof on lap times.
 */
package insidelift.console.advice;
