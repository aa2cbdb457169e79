/** What a change of camber or caster does, as numbers, words and JSON. */
package insidelift.engine.geometry.effect;
