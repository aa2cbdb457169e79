@echo off
rem Starts Insidelift from its archive: needs Java 17 or newer and nothing else.
setlocal
set "HERE=%~dp0"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo insidelift: no Java found; install Java 17 or newer, or set JAVA_HOME 1>&2
  exit /b 1
)
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx256m -cp "%HERE%lib\*" insidelift.console.Insidelift %*
exit /b %errorlevel%
