/** An invented story that shows what the program does; every answer in it is computed. */
package insidelift.console.demo;
