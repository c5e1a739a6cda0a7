@echo off
rem Starts Hibernacle. Needs Java 17 or newer: in the folder "runtime" beside "bin", in JAVA_HOME or
rem on the path. HIBERNACLE_JAVA_OPTIONS holds options for Java, such as -Xmx4g, apart by spaces.
rem With the first plan, a second run beside it plans the demo, out of sight and with what time is to
rem spare, and leaves a file in %LOCALAPPDATA%\hibernacle from which Java starts quicker later on; it
rem may be deleted at any time.
setlocal DisableDelayedExpansion
if "%~1"=="/learn" goto learn
set "program=%~dp0.."

rem Files dropped on this file in the Explorer: its window closes at the end unless it waits. The
rem Explorer says: /c ""this file" dropped files". HIBERNACLE_NO_PAUSE, set to anything, never waits.
set "dropped="
set "terminal=false"
for %%e in (.xlsx .xlsm .csv) do if /i "%~x1"=="%%e" set "dropped=maybe"
if not defined dropped goto find_java
set "dropped="
echo "%cmdcmdline:"='%" | "%SystemRoot%\System32\find.exe" /i " /c ''%~f0' " >nul && set "dropped=yes"
if defined dropped set "terminal=true"

:find_java
set "java=%program%\runtime\bin\java.exe"
if exist "%java%" goto version
set "java="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if defined java goto version
for %%i in (java.exe) do set "java=%%~$PATH:i"
if defined java goto version
echo Hibernacle needs Java 17 or newer, and none was found in JAVA_HOME or on the path. 1>&2
echo Install one, or set JAVA_HOME to its folder. 1>&2
set "code=1"
goto end

:version
for %%j in ("%java%") do set "bin=%%~dpj"
set "version="
set "build="
for /f "tokens=2 delims==" %%v in ('findstr /b "JAVA_RUNTIME_VERSION=" "%bin%..\release" 2^>nul') do set "build=%%~v"
for /f "tokens=2 delims==" %%v in ('findstr /b "JAVA_VERSION=" "%bin%..\release" 2^>nul') do set "version=%%~v"
if defined version goto compare
for /f "tokens=3" %%v in ('^""%java%" -version 2^>^&1 ^| findstr /i /c:" version "^"') do set "version=%%~v"

:compare
set "major="
for /f "delims=.-+_ " %%m in ("%version%") do set "major=%%m"
if not defined major goto too_old
if %major% GEQ 17 goto archive

:too_old
echo Hibernacle needs Java 17 or newer; "%java%" is %version%. 1>&2
echo Install a newer one, or set JAVA_HOME to its folder. 1>&2
set "code=1"
goto end

:archive
rem What is soon over is quicker with the quick compiler alone; planning wants the thorough one.
set "quick="
for %%c in (check winters species blank help --help --version) do if /i "%~1"=="%%c" set "quick=-XX:TieredStopAtLevel=1"
set "archive="
if not defined LOCALAPPDATA goto plain
if defined HIBERNACLE_JAVA_OPTIONS goto plain
if not defined build set "build=%version%"
rem One for each copy of the program and each build of Java. The name ends with the length, since
rem Java trusts a file that was cut short.
set "copy=%~dp0"
set "copy=%copy:\=-%"
set "copy=%copy::=%"
set "cache=%LOCALAPPDATA%\hibernacle"
set "prefix=hibernacle-@project.version@-java-%build%-%copy%"
for %%f in ("%cache%\%prefix%*.jsa") do if /i "%%~nxf"=="%prefix%%%~zf.jsa" set "archive=%%~ff"
if defined archive goto quick
set "learns="
if /i "%~1"=="plan" set "learns=yes"
for %%e in (.xlsx .xlsm .csv) do if /i "%~x1"=="%%e" set "learns=yes"
for %%h in (-h --help -V --version) do if /i "%~2"=="%%h" set "learns="
if not defined learns goto plain
start "" /b /low "%ComSpec%" /c ^""%~f0" /learn^" <nul >nul 2>nul

:plain
"%java%" -Xlog:disable %quick% -Dhibernacle.terminal=%terminal% %HIBERNACLE_JAVA_OPTIONS% -jar "%program%\lib\hibernacle.jar" %*
set "code=%ERRORLEVEL%"
goto end

:quick
"%java%" -Xshare:auto "-XX:SharedArchiveFile=%archive%" -XX:+VerifySharedSpaces -Xlog:disable %quick% -Dhibernacle.terminal=%terminal% -jar "%program%\lib\hibernacle.jar" %*
set "code=%ERRORLEVEL%"

:end
if defined dropped if not defined HIBERNACLE_NO_PAUSE pause
exit /b %code%

rem Plans the demo into a folder in the cache, to have Java write down which classes a plan needs. Who
rem makes the folder learns, so that two never do so at once. Where it fails the folder stays, and
rem for a day nobody tries again. The names above came along with the environment.
:learn
if not exist "%cache%\" md "%cache%"
set "work=%cache%\%prefix%.new"
forfiles /p "%cache%" /m "hibernacle-*.new" /d -1 /c "cmd /c rd /s /q @path"
forfiles /p "%cache%" /m "hibernacle-*.jsa" /d -180 /c "cmd /c del /f /q @path"
md "%work%" || exit /b 1
"%java%" "-XX:ArchiveClassesAtExit=%work%\new.jsa" -Xlog:disable -Xmx512m -jar "%program%\lib\hibernacle.jar" plan "%program%\demo-data\inventory.xlsx" "%program%\demo-data\temperatures.csv" -o "%work%\plan" --without-remedies || exit /b 1
del /f /q "%cache%\%prefix%*.jsa"
for %%f in ("%work%\new.jsa") do move /y "%%~ff" "%cache%\%prefix%%%~zf.jsa" || exit /b 1
rd /s /q "%work%"
exit /b 0
