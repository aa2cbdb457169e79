/**
 * Pictures in plain characters, for a screen of 80 by 24 without colour. Each also says in one
 * sentence what it shows, for a reader who does not see it.
 */
package insidelift.console.picture;
