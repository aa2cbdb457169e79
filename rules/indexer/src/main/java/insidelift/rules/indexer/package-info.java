/** Used by the build only: parses rules and tables, refuses what is not plain, writes the index. */
package insidelift.rules.indexer;
