/** Reads and writes the case file; every wrong place is named. */
package insidelift.shared.casefile;
