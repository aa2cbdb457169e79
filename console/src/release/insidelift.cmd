@echo off
rem Starts Insidelift from its archive: needs Java 17 or newer and nothing else.
setlocal
set "HERE=%~dp0"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not "%JAVA%"=="java" goto found
rem To ask for its version would start Java twice.
where java >nul 2>&1
if errorlevel 1 (
  echo insidelift: no Java found; install Java 17 or newer, or set JAVA_HOME 1>&2
  exit /b 1
)
:found
rem By its jar, whose manifest lets the terminal library call the system: Java 25 asks for that.
for %%J in ("%HERE%lib\insidelift-console-*.jar") do set "JAR=%%~fJ"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=3 -XX:+UseSerialGC -Xmx256m -XX:+ErrorFileToStderr -Xlog:disable -Xlog:all=error:stderr -jar "%JAR%" %*
exit /b %errorlevel%
