/** From a situation to the facts that are weighed. */
package insidelift.engine.weighing;
