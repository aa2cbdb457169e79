@echo off
rem Starts Insidelift; builds it first if it has not been built yet.
setlocal
set "HERE=%~dp0"
set "LIB=%HERE%target\lib"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not "%JAVA%"=="java" goto found
rem To ask for its version would start Java twice.
where java >nul 2>&1
if errorlevel 1 (
  echo insidelift: no Java found; install a JDK 17 or newer, or set JAVA_HOME 1>&2
  exit /b 1
)
:found
if not exist "%LIB%\complete" (
  where mvn >nul 2>&1
  if errorlevel 1 (
    echo insidelift: it has not been built yet and Maven was not found 1>&2
    exit /b 1
  )
  echo Building Insidelift once; this takes a minute or two ... 1>&2
  if not exist "%HERE%target" mkdir "%HERE%target"
  pushd "%HERE%.."
  call mvn -B -q -Dmaven.test.skip=true package > "%HERE%target\first-build.log" 2>&1 <nul
  if errorlevel 1 (
    popd
    echo insidelift: the build failed; see "%HERE%target\first-build.log" 1>&2
    exit /b 1
  )
  popd
)
rem By its jar, whose manifest lets the terminal library call the system: Java 25 asks for that.
for %%J in ("%LIB%\insidelift-console-*.jar") do set "JAR=%%~fJ"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=3 -XX:+UseSerialGC -Xmx256m -XX:+ErrorFileToStderr -Xlog:disable -Xlog:all=error:stderr -jar "%JAR%" %*
exit /b %errorlevel%
